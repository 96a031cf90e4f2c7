import { faults } from '@ballfirst/library/types';
import { z } from 'zod';
import { operation } from '../operation.ts';
import { Instant } from '../words.ts';

const Rate = z.number().gt(0).lt(1);
const LearnedCause = z.object({
  causeId: z.string(),
  name: z.string(),
  /** How often a coach freely named it as the first cause of this miss, of the times it could have been seen. */
  chosen: z.number().int(),
  seen: z.number().int(),
  /** How often the library’s own rates let it be named first in those swings. */
  expected: z.number(),
  /** One rate a cause, over all misses. */
  libraryRate: Rate,
  rate: Rate,
});
export const Learning = z.object({
  on: z.boolean(),
  since: Instant.nullable(),
  resetAt: Instant.nullable(),
  /** One swing in so many is held back. */
  oneIn: z.number().int(),
  /** Swings that count: named before the order was shown, and chosen against it. */
  blind: z.number().int(),
  overruled: z.number().int(),
  /** The miss with most swings first; causes in the order of how often they were chosen. */
  faults: z.array(
    z.object({ fault: z.enum(faults), swings: z.number().int(), causes: z.array(LearnedCause) }),
  ),
});

export const readLearning = operation({
  id: 'readLearning',
  method: 'GET',
  path: '/api/settings/learning',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'What the academy has learned: how often each cause was freely named, and the rate that comes of it.',
  reply: Learning,
});
export const setLearning = operation({
  id: 'setLearning',
  method: 'PUT',
  path: '/api/settings/learning',
  tag: 'review',
  who: ['manager'],
  status: 200,
  summary:
    'Switch learning on or off. Off: no order is held back, nothing is counted, the library’s rates hold.',
  body: z.object({ on: z.boolean() }),
  reply: Learning,
});
export const resetLearning = operation({
  id: 'resetLearning',
  method: 'POST',
  path: '/api/settings/learning/reset',
  tag: 'review',
  who: ['manager'],
  status: 200,
  summary: 'Begin anew: nothing chosen up to now counts any more.',
  reply: Learning,
});
