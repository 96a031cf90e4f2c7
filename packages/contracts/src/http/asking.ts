import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant, Standing, Tally } from '../words.ts';
import { ThreadLine } from './practice.ts';
import { idParam } from './submissions.ts';

const Words = z.object({
  words: z.string().trim().min(1, 'Write what you would like to say.').max(1000),
});
const Thread = z.object({ thread: z.array(ThreadLine) });

export const askBack = operation({
  id: 'askBack',
  method: 'POST',
  path: '/api/replies/{id}/questions',
  tag: 'practice',
  who: ['student'],
  status: 201,
  summary: 'Ask back about a reply; the question stands in the inbox of the coaches.',
  params: idParam,
  body: Words,
  reply: Thread,
  creates: true,
});
export const answerBack = operation({
  id: 'answerBack',
  method: 'POST',
  path: '/api/replies/{id}/answers',
  tag: 'practice',
  who: ['coach', 'manager'],
  status: 201,
  summary: 'Answer what a student asked back; the question leaves the inbox and the student gets a letter.',
  params: idParam,
  body: Words,
  reply: Thread,
  creates: true,
});

/** A swing of the trial: when it was sent, its ten balls, and a picture of a moment that both have, where there is one. */
export const Side = z.object({
  submissionId: Id,
  sentAt: Instant,
  tally: Tally,
  picture: z
    .object({
      rendition: z.string(),
      poster: z.string(),
      timeS: z.number(),
      widthPx: z.number().int(),
      heightPx: z.number().int(),
    })
    .nullable(),
});
export const OwnTrial = z.object({
  standing: Standing,
  day: z.number().int().nullable(),
  days: z.number().int(),
  endsAt: Instant.nullable(),
  priceWords: z.string(),
  /** The moment the two pictures show: a position, or null where there is no pair. */
  moment: z.string().nullable(),
  first: Side.nullable(),
  /** Null until a second swing was sent. */
  latest: Side.nullable(),
  replies: z.number().int(),
  practiceEntries: z.number().int(),
  rungsPassed: z.number().int(),
  joinAskedAt: Instant.nullable(),
});
export const readOwnTrial = operation({
  id: 'readOwnTrial',
  method: 'GET',
  path: '/api/trial',
  tag: 'practice',
  who: ['student'],
  status: 200,
  summary: "The student's own trial: then and now, what was done, what it costs to go on.",
  reply: OwnTrial,
});
export const askToJoin = operation({
  id: 'askToJoin',
  method: 'POST',
  path: '/api/trial/join',
  tag: 'practice',
  who: ['student'],
  status: 200,
  summary: 'Say that one would like to join. Nothing is charged: a manager gets in touch.',
  reply: OwnTrial,
});
