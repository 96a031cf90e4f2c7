import { z } from 'zod';
import { operation } from '../operation.ts';
import { Club, Cursor, Id, Instant, Outcome, Pain, Standing, SwingLength, Tally, View } from '../words.ts';

/** Why a row stands where it stands; put into words by `inbox-words.ts`. */
export const Reason = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('pain'), pain: z.enum(['new', 'worse']) }),
  z.object({ kind: z.literal('fault'), fault: Outcome, probability: z.number(), headStartHours: z.number() }),
  z.object({ kind: z.literal('trial-ending'), endsAt: Instant }),
  z.object({ kind: z.literal('promise'), answerBy: Instant }),
  z.object({ kind: z.literal('first-swing') }),
  z.object({ kind: z.literal('check-in') }),
]);
export type Reason = z.infer<typeof Reason>;

export const InboxItem = z.object({
  id: Id,
  kind: z.literal('swing'),
  student: z.object({
    id: Id,
    name: z.string(),
    standing: Standing,
    trialDay: z.number().int().nullable(),
    trialEndsAt: Instant.nullable(),
  }),
  club: Club,
  view: View,
  swingLength: SwingLength,
  leadFault: Outcome.nullable(),
  tally: Tally,
  note: z.string(),
  pain: Pain,
  painSeenAt: Instant.nullable(),
  reasons: z.array(Reason),
  answerBy: Instant,
  block: z.enum(['pain', 'late', 'before-noon', 'today', 'tomorrow', 'later']),
  claim: z.object({ membershipId: Id, name: z.string(), expiresAt: Instant }).nullable(),
  poster: z.string().nullable(),
  sentAt: Instant,
});
export type InboxItem = z.infer<typeof InboxItem>;

export const readInbox = operation({
  id: 'readInbox',
  method: 'GET',
  path: '/api/inbox',
  tag: 'inbox',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'What waits for the coaches, by priority; pain first.',
  query: z.object({
    after: Cursor.optional(),
    limit: z.coerce.number().int().min(1).max(100).default(50),
    fault: Outcome.optional(),
    claimed: z.enum(['nobody', 'me']).optional(),
  }),
  reply: z.object({ items: z.array(InboxItem), next: Cursor.nullable() }),
});
