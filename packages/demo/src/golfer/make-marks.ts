import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { pixelsPerMm } from './camera.ts';
import type { Shot } from './draw-swing.ts';
import type { Moment } from './moments.ts';
import { type GolferPoint, spotsOf } from './points.ts';
import { sceneOf } from './truth.ts';

/** One click of a coach on a frame of a shot, in pixels of its picture. */
export type GolferMark = {
  readonly position: Moment;
  readonly point: GolferPoint;
  readonly frame: number;
  readonly x: number;
  readonly y: number;
  readonly source: 'coach';
};

/** 1 SD of a click in pixels of a picture 1080 wide, by point (design of the truth test; common practice, no source). */
const clickAt1080: Readonly<Record<GolferPoint, number>> = {
  ball: 1,
  'lead-heel': 2,
  'trail-heel': 2,
  clubhead: 2,
  'target-stick': 2,
  'target-stick-ahead': 2,
  'lead-wrist': 3,
  'trail-wrist': 3,
  'lead-elbow': 3,
  'grip-end': 3,
  'shaft-mid': 3,
  hands: 3,
  'lead-ankle': 3,
  'trail-ankle': 3,
  'toe-line': 3,
  'head-centre': 4,
  'lead-shoulder': 5,
  'neck-base': 5,
  'lead-thigh-inside': 5,
  'thigh-front': 5,
  buckle: 3,
  'hip-middle': 6,
  'seat-line': 6,
};

/** What clothing and turn hide of a point across the picture, 1 SD in mm: marking twice does not show it (facts: 15-20 mm; common practice). */
export const usualClothingMm: Readonly<Partial<Record<GolferPoint, number>>> = {
  'hip-middle': 17,
  'neck-base': 17,
};
/** Half of it is the same shirt at every moment. */
const clothingShared = 0.5;

export type MarkNoise = {
  /** Factor on the clicks: 0 gives marks to the pixel. */
  readonly clicks?: number;
  readonly clothingMm?: Readonly<Partial<Record<GolferPoint, number>>>;
  /** Seed of the coach's own bias; the same coach errs the same way on every swing. */
  readonly coachSeed?: number;
};

/**
 * The marks of one coach on one shot: .9 N(0, s) + .1 N(0, 3s) a click and axis, a bias of .5 s a point for the coach,
 * and what clothing hides; `s` grows with the picture.
 *
 * @param places moments with the points marked on them, as in a first pass
 * @source the design of the truth test
 */
export function makeMarks(
  shot: Shot,
  places: readonly { readonly position: Moment; readonly point: GolferPoint }[],
  seed: number,
  { clicks = 1, clothingMm = usualClothingMm, coachSeed = 0 }: MarkNoise = {},
): readonly GolferMark[] {
  const { swing, camera, truth } = shot;
  const random = seededRandom(seed);
  const scale = (clicks * Math.min(camera.widthPx, camera.heightPx)) / 1080;
  const shirt = new Map<GolferPoint, number>();
  const click = () => (random() < 0.1 ? 3 : 1) * drawNormal(random);
  return places.map(({ position, point }) => {
    const s = clickAt1080[point] * scale;
    const own = shirt.get(point) ?? drawNormal(random);
    shirt.set(point, own);
    const bias = biasOf(coachSeed, point);
    const spot = spotsOf(swing.poseAt(truth.positions[position] / truth.fps))[point];
    const worn = (clothingMm[point] ?? 0) * pixelsPerMm(camera, sceneOf(swing), spot);
    const now = drawNormal(random);
    const hidden = worn * (Math.sqrt(clothingShared) * own + Math.sqrt(1 - clothingShared) * now);
    const [x, y] = truth.points[position][point];
    return {
      position,
      point,
      frame: truth.positions[position],
      x: x + hidden + s * (click() + 0.5 * bias[0]),
      y: y + s * (click() + 0.5 * bias[1]),
      source: 'coach' as const,
    };
  });
}

/** How one coach errs on one kind of point, in units of its s. */
function biasOf(coachSeed: number, point: GolferPoint): readonly [number, number] {
  let mixed = coachSeed | 0;
  for (const letter of point) mixed = Math.imul(mixed ^ letter.charCodeAt(0), 0x01000193);
  const random = seededRandom(mixed);
  return [drawNormal(random), drawNormal(random)];
}
