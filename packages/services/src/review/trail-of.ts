import { TrailPoint } from '@ballfirst/contracts/http/submissions';
import type { Picture } from '@ballfirst/swing/marks/marks';
import { z } from 'zod';
import { readFrameTimes } from '../clips/read-frame-times.ts';
import type { Context } from '../context.ts';
import { pictureOf } from './picture-of.ts';

type Stored = Parameters<typeof pictureOf>[0] & { readonly id: string; readonly trail: unknown };

/** The clubhead over frames, as it is stored with a clip. */
export const trailOf = ({ trail }: Pick<Stored, 'trail'>): z.output<typeof TrailPoint>[] =>
  z.array(TrailPoint).parse(trail);

/**
 * What marks and trail of a clip lie on. The arc asks for the true time of each frame: they are read where there is a trail,
 * and only then.
 * @throws ProblemError wrong-state while the clip is not ready
 */
export const timedPicture = async (
  ctx: Context,
  clip: Omit<Stored, 'trail'>,
  trail: readonly unknown[],
): Promise<Picture> => {
  const picture = pictureOf(clip);
  const times = trail.length === 0 ? null : await readFrameTimes(ctx, clip.id);
  return times === null || times.length !== picture.frameTimesS.length
    ? picture
    : { ...picture, frameTimesS: times };
};
