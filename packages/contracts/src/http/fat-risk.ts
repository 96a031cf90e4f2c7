import { z } from 'zod';
import { operation } from '../operation.ts';
import { SwingLength } from '../words.ts';
import { idParam } from './submissions.ts';

const Known = z.object({ value: z.number(), u: z.number() });
const mm = z.number().min(-10_000).max(10_000);

/** What one swing tells of its arc, in mm: the doubt of its own marks apart from what its set-up shares. */
const Arc = z.object({
  lowPointMm: mm,
  uOwnMm: mm.min(0),
  uTiltMm: mm.min(0),
  radiusMm: mm.min(1),
  uRadiusMm: mm.min(0),
  perRadius: z.number().min(-100).max(100),
});
/** What is known of a student's set with one club: what the fat share of the set is reckoned from. */
export const StudentSet = z.object({
  lie: z.string().max(20),
  setUp: z.string().max(40),
  /** This submission's and recent swings with the clubhead marked over frames, ten at most. */
  swings: z
    .array(
      z.object({ clipId: z.string().max(40), setUp: z.string().max(40), swingLength: SwingLength, arc: Arc }),
    )
    .max(20),
  /** Where the brushes of the newest line test start, mm, + past the line; null: none is recent. */
  lineTestMm: z.array(z.number().min(-1000).max(1000)).min(3).max(50).nullable(),
  /** How many balls met the ground first. */
  balls: z
    .object({ fat: z.number().int().min(0).max(100), of: z.number().int().min(1).max(100) })
    .refine(({ fat, of }) => fat <= of, 'More balls were fat than were hit.')
    .nullable(),
});

const Way = z.object({
  byMm: z.number(),
  lowMm: z.number(),
  highMm: z.number(),
  /** What it costs: chance of a thin ball, and that the club never meets the ground. */
  thin: z.number(),
  missesGround: z.number(),
});
/** How often a set meets the ground more than 30 mm behind the ball, and what brings that to one in ten; or why not told. */
export const FatRisk = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('told'),
    fat: z.number(),
    /** Two chances in three that it lies between. */
    fatLow: z.number(),
    fatHigh: z.number(),
    thin: z.number(),
    missesGround: z.number(),
    goal: z.number(),
    forward: Way,
    higher: Way,
    lowPointMm: Known,
    scatterMm: z.number(),
    depthMm: Known,
    depthFrom: z.enum(['line-test', 'balls']),
    radiusMm: Known,
    swings: z.number().int(),
    setUps: z.number().int(),
    used: z.array(z.string()),
    missing: z.array(z.string()),
  }),
  z.object({
    kind: z.literal('refused'),
    why: z.enum(['driver', 'sand', 'no-swing', 'no-depth', 'do-not-fit']),
    words: z.string(),
  }),
]);

export const readStudentSet = operation({
  id: 'readStudentSet',
  method: 'GET',
  path: '/api/submissions/{id}/set',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'What is known of the student’s set with the club of a swing: arcs of recent swings, the newest line test, the balls that were counted.',
  params: idParam,
  reply: StudentSet,
});
