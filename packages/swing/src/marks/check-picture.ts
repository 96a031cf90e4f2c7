import type { Picture } from './marks.ts';

/** Larger than any camera films, and longer than any swing. */
const most = { sidePx: 20_000, frames: 100_000 };

/**
 * Lets a picture pass that marks can be read on.
 *
 * @throws RangeError when a side is not positive and sensible, or the times of the frames do not grow
 */
export function checkPicture({ widthPx, heightPx, frameTimesS }: Picture): void {
  for (const [name, side] of Object.entries({ width: widthPx, height: heightPx })) {
    if (!(side > 0 && side <= most.sidePx))
      throw new RangeError(`The ${name} of the picture is ${side} pixels.`);
  }
  if (frameTimesS.length > most.frames) throw new RangeError(`${frameTimesS.length} frames are too many.`);
  for (let frame = 0; frame < frameTimesS.length; frame += 1) {
    const time = frameTimesS[frame] ?? Number.NaN;
    if (!Number.isFinite(time)) throw new RangeError(`Frame ${frame} has no time.`);
    if (frame > 0 && !(time > (frameTimesS[frame - 1] ?? time))) {
      throw new RangeError(`Frame ${frame} is not later than the one before it.`);
    }
  }
}
