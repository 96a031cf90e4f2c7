import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant, SetUpTick } from '../words.ts';
import { Plan } from './review.ts';
import { idParam } from './submissions.ts';

/** A sent reply kept for the next player with the same cause: its words hold variables in place of names and values. */
export const StartingPoint = z.object({
  id: Id,
  cause: z.string(),
  words: z.string(),
  setUpTicks: z.array(SetUpTick),
  plan: Plan.nullable(),
  by: z.string(),
  at: Instant,
});

export const keepStartingPoint = operation({
  id: 'keepStartingPoint',
  method: 'POST',
  path: '/api/replies/{id}/starting-point',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 201,
  summary: 'Keep a sent reply as a starting point for the next player with the same cause.',
  params: idParam,
  reply: StartingPoint,
  creates: true,
});
export const listStartingPoints = operation({
  id: 'listStartingPoints',
  method: 'GET',
  path: '/api/starting-points',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The replies kept as starting points, newest first.',
  reply: z.object({ items: z.array(StartingPoint) }),
});
export const removeStartingPoint = operation({
  id: 'removeStartingPoint',
  method: 'DELETE',
  path: '/api/starting-points/{id}',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 204,
  summary: 'Take a starting point out of the list.',
  params: idParam,
  reply: z.null(),
});
