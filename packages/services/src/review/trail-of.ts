import { TrailPoint } from '@ballfirst/contracts/http/submissions';
import { asksForTimes } from '@ballfirst/swing/asks-for-times';
import type { Mark, Picture } from '@ballfirst/swing/marks/marks';
import { z } from 'zod';
import { readFrameTimes } from '../clips/read-frame-times.ts';
import type { Context } from '../context.ts';
import { pictureOf } from './picture-of.ts';

type Stored = Parameters<typeof pictureOf>[0] & { readonly id: string; readonly trail: unknown };

/** The clubhead over frames, as it is stored with a clip. */
export const trailOf = ({ trail }: Pick<Stored, 'trail'>): z.output<typeof TrailPoint>[] =>
  z.array(TrailPoint).parse(trail);

/**
 * What marks and trail of a clip lie on, with the true times of its frames where something marked is measured by them.
 * @throws ProblemError wrong-state while the clip is not ready
 */
export const timedPicture = async (
  ctx: Context,
  clip: Omit<Stored, 'trail'>,
  { marks, trail }: { readonly marks: readonly Pick<Mark, 'position'>[]; readonly trail: readonly unknown[] },
): Promise<Picture> => {
  const picture = pictureOf(clip);
  const times = asksForTimes(marks, trail) ? await readFrameTimes(ctx, clip.id) : null;
  return times === null || times.length !== picture.frameTimesS.length
    ? picture
    : { ...picture, frameTimesS: times };
};
