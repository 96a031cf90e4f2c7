import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant } from '../words.ts';

const Interval = z.object({ share: z.number(), low: z.number(), high: z.number() });

export const CoachRow = z.object({
  id: Id,
  name: z.string(),
  role: z.enum(['coach', 'manager']),
  /** Swings the coach holds now. */
  claimed: z.number().int(),
  /** Replies sent in the period. */
  answered: z.number().int(),
  /** Working hours from a swing being sent to its reply; null without a reply in the period. */
  hoursHalf: z.number().nullable(),
  hoursMost: z.number().nullable(),
  /** Replies by the promised moment, with the 95 % Wilson interval. */
  kept: Interval.nullable(),
});
export const Coaches = z.object({
  days: z.number().int(),
  waiting: z.number().int(),
  late: z.number().int(),
  oldestSentAt: Instant.nullable(),
  promiseHours: z.number().int(),
  filmAgain: Interval.nullable(),
  all: CoachRow.omit({ id: true, name: true, role: true, claimed: true }),
  items: z.array(CoachRow),
});
export const readCoaches = operation({
  id: 'readCoaches',
  method: 'GET',
  path: '/api/coaches/turnaround',
  tag: 'staff',
  who: ['manager'],
  status: 200,
  summary: 'What waits, and how long each coach takes to answer, over the last days.',
  query: z.object({ days: z.coerce.number().int().min(7).max(365).default(30) }),
  reply: Coaches,
});
