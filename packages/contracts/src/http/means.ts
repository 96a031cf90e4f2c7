import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { pains } from '@ballfirst/library/types';
import { z } from 'zod';
import { operation } from '../operation.ts';
import { Outcome, Place } from '../words.ts';

const equipmentIds = Object.keys(equipment) as [EquipmentId, ...EquipmentId[]];

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
  /** Balls at hand a session. */
  balls: z.number().int().min(0).max(90).nullable(),
  /** What lies at hand; empty: what every student is taken to have. */
  equipment: z.array(z.enum(equipmentIds)).max(equipmentIds.length),
  /** Body parts that hurt, health data like the note: no drill that strains them is given. */
  pains: z.array(z.enum(pains)).max(pains.length),
});
/** What is left out stays as it is. */
const { balls, equipment: things, pains: hurts } = PracticeMeans.shape;
const ToldMeans = PracticeMeans.extend({
  balls: balls.exactOptional(),
  equipment: things.exactOptional(),
  pains: hurts.exactOptional(),
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
  body: ToldMeans,
  reply: PracticeMeans,
});
