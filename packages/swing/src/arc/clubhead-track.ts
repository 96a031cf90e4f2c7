import { toFrame } from '../camera/frame.ts';
import { sightOf } from '../camera/sight.ts';
import { stickTilt } from '../camera/stick-tilt.ts';
import { checkMark } from '../marks/check-mark.ts';
import type { Mark, Picture, Setting } from '../marks/marks.ts';
import { type PlacedMarks, placeMarks } from '../marks/placed-marks.ts';
import type { ClubheadMark } from './arc-question.ts';

/** The clubhead on one frame, in pixels of the picture. */
export type ClubheadPixel = { readonly frame: number; readonly x: number; readonly y: number };

export type ClubheadTrack = {
  readonly marks: readonly ClubheadMark[];
  /** Standard deviation of one mark each way, mm. */
  readonly clickMm: number;
  readonly framesPerSecond: number;
  readonly tilt: { readonly uDeg: number } | null;
};

/** A clubhead mark as a click on the picture: its doubt is the same. */
const asMark = ({ frame, x, y }: ClubheadPixel): Mark => ({
  position: 'impact',
  point: 'clubhead',
  frame,
  x,
  y,
  source: 'coach',
});

const ballOf = (placed: PlacedMarks) => {
  const ball = placed.at({ position: 'address', point: 'ball' });
  if (ball === undefined) throw new RangeError('ball is not marked at address.');
  return ball;
};

/**
 * The clubhead near the ball as the arc estimator reads it: seconds, and mm from the ball at the ball's own scale, turned
 * until the stick is level.
 *
 * @param pixels - one for each frame, in any order
 * @param marks - the other marks of the swing: ball, and a stick or the club at address
 * @returns without a stick `tilt` is null, and the estimator will refuse
 * @throws RangeError on a mark outside the picture, a view from behind, or when ball or scale are not marked
 * @example estimateArc({ ...clubheadTrack(pixels, marks, picture, setting), blurMm: 10, ...rest })
 */
export function clubheadTrack(
  pixels: readonly ClubheadPixel[],
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
): ClubheadTrack {
  if (setting.view !== 'face-on') throw new RangeError('The arc is read from a face-on picture only.');
  if (pixels.length > 200) throw new RangeError(`${pixels.length} clubhead marks are too many.`);
  const placed = placeMarks(marks, picture, setting);
  const ball = ballOf(placed);
  const sight = sightOf(placed, picture, setting);
  if (sight.scaleFrom === null)
    throw new RangeError('No scale: mark a stick, or ball and grip end at address.');
  const mmPerPx = sight.distanceMm.value / sight.focalPx.value;
  const tilt = stickTilt(placed);
  const angle = ((tilt?.deg ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const track = pixels
    .toSorted((a, b) => a.frame - b.frame)
    .map((pixel): ClubheadMark => {
      checkMark(asMark(pixel), picture);
      const { levelPx, upPx } = toFrame(pixel, picture, setting.hand, setting.view);
      const [level, up] = [levelPx - ball.levelPx, upPx - ball.upPx];
      return {
        timeS: picture.frameTimesS[pixel.frame] ?? Number.NaN,
        xMm: mmPerPx * (level * cos + up * sin),
        zMm: mmPerPx * (up * cos - level * sin),
      };
    });
  const times = picture.frameTimesS;
  const lasts = (times.at(-1) ?? 0) - (times[0] ?? 0);
  return {
    marks: track,
    clickMm: mmPerPx * Math.max(0.5, (2 * Math.min(picture.widthPx, picture.heightPx)) / 1080),
    framesPerSecond: lasts > 0 ? (times.length - 1) / lasts : 0,
    tilt: tilt === null ? null : { uDeg: tilt.uDeg },
  };
}
