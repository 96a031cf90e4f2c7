import { z } from 'zod';
import { operation } from '../operation.ts';
import { Club, Hand, Id, Instant, LocalDate } from '../words.ts';
import { Clip, idParam, Mark } from './submissions.ts';

/** A swing that can stand beside the one on the desk. */
export const Comparable = z.object({
  clip: Clip,
  /** An earlier swing of this student, or one of the academy's own collection. */
  from: z.enum(['student', 'collection']),
  /** What the collection calls it; null: the student's own. */
  name: z.string().nullable(),
  sentAt: Instant,
  club: Club,
  hand: Hand,
  balls: z.number().int(),
  solid: z.number().int(),
  /** The student's last swing before this one; of those before, the one with the most solid balls. */
  last: z.boolean(),
  best: z.boolean(),
  /** Marks tie the moments of two swings to each other. */
  marks: z.array(Mark),
});

/** A clip of the academy's own collection, with what the player allowed. */
export const ModelSwing = z.object({
  clipId: Id,
  name: z.string(),
  player: z.string(),
  club: Club,
  view: Clip.shape.view,
  permission: z.string(),
  permittedOn: LocalDate,
  keptBy: z.string(),
  keptAt: Instant,
  poster: z.string().nullable(),
});

export const listComparable = operation({
  id: 'listComparable',
  method: 'GET',
  path: '/api/submissions/{id}/comparable',
  tag: 'compare',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'What this swing can be compared with: earlier ones of the student, and the academy’s collection.',
  params: idParam,
  reply: z.object({ items: z.array(Comparable) }),
});
export const listModelSwings = operation({
  id: 'listModelSwings',
  method: 'GET',
  path: '/api/model-swings',
  tag: 'compare',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The academy’s own collection of model swings, by name.',
  reply: z.object({ items: z.array(ModelSwing) }),
});
export const keepModelSwing = operation({
  id: 'keepModelSwing',
  method: 'POST',
  path: '/api/clips/{id}/model-swing',
  tag: 'compare',
  who: ['manager'],
  status: 201,
  summary: 'Take a clip into the collection, with the permission of the player in words.',
  params: idParam,
  body: z.object({
    name: z.string().trim().min(1, 'Give it a name.').max(80),
    permission: z
      .string()
      .trim()
      .min(10, 'Write down who allowed it, how, and for what: ten letters at least.')
      .max(400),
    permittedOn: LocalDate,
  }),
  reply: ModelSwing,
  creates: true,
});
export const endModelSwing = operation({
  id: 'endModelSwing',
  method: 'DELETE',
  path: '/api/clips/{id}/model-swing',
  tag: 'compare',
  who: ['manager'],
  status: 204,
  summary: 'Take a clip out of the collection; what was allowed stays on record.',
  params: idParam,
  reply: z.null(),
});
