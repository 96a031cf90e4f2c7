import { outcomes } from '@ballfirst/library/types';
import { clubs, hands, points, positions, swingLengths, views } from '@ballfirst/swing/marks/marks';
import { z } from 'zod';

/** The closed word lists of the lesson and the business, as zod enums. One word for one thing. */
export const Role = z.enum(['coach', 'manager', 'student']);
export const Standing = z.enum(['invited', 'trial', 'lapsed', 'paid', 'paused', 'left']);
export const Club = z.enum(clubs);
export const Hand = z.enum(hands);
export const View = z.enum(views);
export const SwingLength = z.enum(swingLengths);
/** What a file that is sent shows: a swing from one side, or a still of the hands, which has no length. */
export const FileView = z.enum([...views, 'grip-photo']);
export const FileLength = z.enum([...swingLengths, 'none']);
export const Position = z.enum(positions);
export const Point = z.enum(points);
export const Lie = z.enum(['tee', 'mat', 'fairway', 'rough', 'sand', 'slope', 'net']);
export const StartLine = z.enum(['left', 'straight', 'right', 'cannot-see']);
export const Curve = z.enum(['left', 'none', 'right', 'cannot-see']);
export const Pain = z.enum(['none', 'new', 'worse']);
export const AgeGroup = z.enum(['adult', 'junior', 'senior']);
export const Typical = z.enum(['usual', 'best', 'unsure']);
export const SubmissionStatus = z.enum([
  'preparing',
  'needs-clip',
  'waiting',
  'answered',
  'film-again',
  'withdrawn',
]);
export const ClipStatus = z.enum([
  'uploading',
  'uploaded',
  'preparing',
  'ready',
  'refused',
  'expired',
  'erased',
]);
export const Place = z.enum(['mat', 'grass', 'home']);
export const SetUpTick = z.enum(['grip', 'handle', 'hips', 'ball']);
export const Outcome = z.enum(outcomes);
export const ProgrammeStatus = z.enum(['open', 'held', 'done', 'replaced']);
export const Verdict = z.enum(['passed', 'stay', 'back', 'hold']);
export const Answer = z.enum(['yes', 'no', 'cannot-tell']);

export const Id = z.uuid();
/** An instant, RFC 3339 in UTC. */
export const Instant = z.iso.datetime();
export const LocalDate = z.iso.date();
export const Zone = z.string().min(1).max(64);
/** Position in a keyset page; opaque to the caller. */
export const Cursor = z.string().max(200);

/** The strike tally: how many of the last N balls were what. The named misses and the solid ones never exceed `balls`. */
export const Tally = z.object({
  balls: z.number().int().min(1).max(100),
  solid: z.number().int().min(0).max(100),
  fat: z.number().int().min(0).max(100),
  thin: z.number().int().min(0).max(100),
  topped: z.number().int().min(0).max(100),
  heel: z.number().int().min(0).max(100),
  toe: z.number().int().min(0).max(100),
  shank: z.number().int().min(0).max(100),
  sky: z.number().int().min(0).max(100),
  counted: z.boolean(),
});
export type Tally = z.infer<typeof Tally>;
