import { z } from 'zod';
import { operation } from '../operation.ts';
import { Outcome, Place } from '../words.ts';

/** What a student has to practise with and wants; null where nothing was said. */
export const PracticeMeans = z.object({
  usualMiss: Outcome.exclude(['solid']).nullable(),
  daysPerWeek: z.number().int().min(1, 'One day a week at least.').max(7).nullable(),
  minutesPerDay: z.number().int().min(5, 'Five minutes at least.').max(240).nullable(),
  place: Place.nullable(),
  goal: z.string().trim().max(300).nullable(),
  /** About the body, health data: kept only with a permission of its own, and taken away with it. */
  body: z.string().trim().max(500).nullable(),
  bodyAgreed: z.boolean(),
});
export type PracticeMeans = z.infer<typeof PracticeMeans>;

export const readMeans = operation({
  id: 'readMeans',
  method: 'GET',
  path: '/api/me/practice-means',
  tag: 'practice',
  who: ['student'],
  status: 200,
  summary: 'What the student told about time, place, goal and body.',
  reply: PracticeMeans,
});
export const saveMeans = operation({
  id: 'saveMeans',
  method: 'PUT',
  path: '/api/me/practice-means',
  tag: 'practice',
  who: ['student'],
  status: 200,
  summary: 'Say with how much time and where one practises; a note about the body needs its own permission.',
  body: PracticeMeans,
  reply: PracticeMeans,
});
