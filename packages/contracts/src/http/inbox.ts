import { z } from 'zod';
import { operation } from '../operation.ts';
import {
  Club,
  Cursor,
  Id,
  Instant,
  Outcome,
  Pain,
  ProgrammeStatus,
  Standing,
  SwingLength,
  Tally,
  Verdict,
  View,
} from '../words.ts';

/** Why a row stands where it stands; put into words by `inbox-words.ts`. */
export const Reason = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('pain'), pain: z.enum(['new', 'worse']) }),
  z.object({ kind: z.literal('fault'), fault: Outcome, probability: z.number(), headStartHours: z.number() }),
  z.object({ kind: z.literal('trial-ending'), endsAt: Instant }),
  z.object({ kind: z.literal('promise'), answerBy: Instant }),
  z.object({ kind: z.literal('old-fault') }),
  z.object({ kind: z.literal('stuck') }),
  z.object({ kind: z.literal('progress') }),
  z.object({ kind: z.literal('promise-at-risk') }),
  z.object({ kind: z.literal('first-swing') }),
  z.object({ kind: z.literal('check-in') }),
]);
export type Reason = z.infer<typeof Reason>;

export const Block = z.enum(['pain', 'late', 'before-noon', 'today', 'tomorrow', 'later']);

/** The student's last programme: the cause it was for, and how far its drill has come. */
const LastProgramme = z.object({
  id: Id,
  cause: z.string(),
  drillId: z.string(),
  rung: z.string(),
  status: ProgrammeStatus,
  /** Of the last practice entry; null before the first one. */
  lastVerdict: Verdict.nullable(),
});

const Claim = z.object({
  membershipId: Id,
  name: z.string(),
  expiresAt: Instant,
  /** Who handed it over and why; null where the coach took it. */
  handed: z.object({ by: z.string(), why: z.string() }).nullable(),
});

const Row = z.object({
  id: Id,
  student: z.object({
    id: Id,
    name: z.string(),
    standing: Standing,
    trialDay: z.number().int().nullable(),
    trialEndsAt: Instant.nullable(),
  }),
  reasons: z.array(Reason),
  raisedAt: Instant,
  answerBy: Instant,
  block: Block,
  claim: Claim.nullable(),
  last: LastProgramme.nullable(),
});

/** What waits for a coach. A swing is a submission; the other kinds are concerns, with operations of their own. */
export const InboxItem = z.discriminatedUnion('kind', [
  Row.extend({
    kind: z.literal('swing'),
    club: Club,
    view: View,
    swingLength: SwingLength,
    leadFault: Outcome.nullable(),
    tally: Tally,
    note: z.string(),
    pain: Pain,
    painSeenAt: Instant.nullable(),
    poster: z.string().nullable(),
  }),
  /** A pain told while practising. Practice is on hold. */
  Row.extend({ kind: z.literal('pain'), pain: z.enum(['new', 'worse']) }),
  /** A trial that ends before its student has opened a reply. */
  Row.extend({ kind: z.literal('trial-ending') }),
  /** What a student asks back about a reply. */
  Row.extend({ kind: z.literal('question'), words: z.string(), replyId: Id }),
  /** Practice that stays where it is, or goes back. */
  Row.extend({ kind: z.literal('stuck') }),
]);
export type InboxItem = z.infer<typeof InboxItem>;
export const InboxKind = z.enum(['swing', 'pain', 'trial-ending', 'question', 'stuck']);

const staff = ['coach', 'manager'] as const;
const concernId = z.object({ id: Id });

export const readInbox = operation({
  id: 'readInbox',
  method: 'GET',
  path: '/api/inbox',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'What waits for the coaches, by priority; pain first.',
  query: z.object({
    after: Cursor.optional(),
    limit: z.coerce.number().int().min(1).max(100).default(50),
    fault: Outcome.optional(),
    claimed: z.enum(['nobody', 'me']).optional(),
    kind: InboxKind.optional(),
    /** Part of a student's name. */
    search: z.string().trim().min(1).max(80).optional(),
  }),
  reply: z.object({ items: z.array(InboxItem), next: Cursor.nullable() }),
});
export const readInboxLoad = operation({
  id: 'readInboxLoad',
  method: 'GET',
  path: '/api/inbox/load',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'Whether what is promised for today can still be kept: what is due, who works, how long is left.',
  reply: z.object({
    /** Swings whose promise has passed; counted up to 999. */
    late: z.number().int(),
    /** Swings promised for the rest of the academy's day; counted up to 999. */
    dueToday: z.number().int(),
    coaches: z.number().int(),
    workingMinutesLeft: z.number().int(),
    /** How many the coaches can answer in what is left of the working day. */
    canAnswer: z.number().int(),
    /** How many of the late and the due are beyond that: 0 when every promise of today can be kept. */
    beyond: z.number().int(),
  }),
});
export const listCoaches = operation({
  id: 'listCoaches',
  method: 'GET',
  path: '/api/inbox/coaches',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'Whom a claim can be handed to.',
  reply: z.object({ items: z.array(z.object({ membershipId: Id, name: z.string() })) }),
});
export const claimNext = operation({
  id: 'claimNext',
  method: 'POST',
  path: '/api/inbox/next',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'Take the first row that nobody has, of one lead fault if asked; null when there is none.',
  body: z.object({ fault: Outcome.nullable().default(null) }),
  reply: z.object({ taken: z.object({ kind: InboxKind, id: Id }).nullable() }),
  creates: true,
});

/** A concern after something was done with it. */
export const Concern = z.object({
  id: Id,
  kind: InboxKind.exclude(['swing']),
  studentId: Id,
  status: z.enum(['waiting', 'closed']),
  claim: Claim.nullable(),
  outcome: z.enum(['spoke', 'wrote', 'no-need']).nullable(),
  version: z.number().int(),
});
export type Concern = z.infer<typeof Concern>;

export const claimConcern = operation({
  id: 'claimConcern',
  method: 'POST',
  path: '/api/concerns/{id}/claim',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'Take a concern, or renew a claim on it; it lapses after thirty minutes.',
  params: concernId,
  reply: Concern,
});
export const releaseConcern = operation({
  id: 'releaseConcern',
  method: 'POST',
  path: '/api/concerns/{id}/release',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'Give a claimed concern back to the inbox.',
  params: concernId,
  reply: Concern,
});
export const closeConcern = operation({
  id: 'closeConcern',
  method: 'POST',
  path: '/api/concerns/{id}/close',
  tag: 'inbox',
  who: staff,
  status: 200,
  summary: 'Say what was done about a concern; it leaves the inbox. Held practice stays on hold.',
  params: concernId,
  body: z.object({ outcome: z.enum(['spoke', 'wrote', 'no-need']) }),
  reply: Concern,
});
