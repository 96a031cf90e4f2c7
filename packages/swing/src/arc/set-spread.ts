import type { Known } from './arc-question.ts';
import { lowPointSpread } from './low-point-spread.ts';

/** A low point with the doubt of its own marks, and the set-up whose level it shares with others. */
export type SetLowPoint = Known & { readonly setUp: string; readonly uTiltMm: number };

export type SetSpread = {
  /** The mean low point, its doubt that of the marks, the few swings and the level of the sticks. */
  readonly meanMm: Known;
  /** How far the player's own low points scatter about it, 1 SD. */
  readonly scatterMm: number;
  /** Degrees of freedom of that scatter. */
  readonly degrees: number;
  readonly setUps: number;
};

/**
 * How far the low points of one player scatter from swing to swing before any was marked, and for how many swings that
 * is reckoned besides the first. Common practice, no source.
 */
export const usualScatter = { mm: 20, swings: 4 } as const;

const sum = (values: readonly number[]) => values.reduce((all, x) => all + x, 0);

/**
 * Mean and scatter of the low points of a set, of one or several set-ups. The doubt of a level is one for all swings of a
 * set-up: it moves their mean and not their scatter; between set-ups it does both.
 *
 * @param uSharedMm - a doubt that all swings share whatever their set-up (the radius)
 * @throws RangeError on no low point, or one that is not a number with a doubt
 * @source scatter as in `lowPointSpread`, joined with the usual one by degrees of freedom; with groups of n_g,
 * E s^2 = s_L^2 + u^2 + t^2 (n^2 - sum n_g^2) / (n (n - 1)) and var(mean) = (s_L^2 + u^2) / n + t^2 sum n_g^2 / n^2: derived here
 * @example setSpread([{ value: 65, u: 13, uTiltMm: 12, setUp: 'a' }], 5).scatterMm // 20
 */
export function setSpread(
  lowPoints: readonly SetLowPoint[],
  uSharedMm = 0,
  usual: { readonly mm: number; readonly swings: number } = usualScatter,
): SetSpread {
  const n = lowPoints.length;
  const numbers = lowPoints.flatMap(({ value, u, uTiltMm }) => [value, u, uTiltMm]);
  if (n === 0 || ![...numbers, uSharedMm].every(Number.isFinite)) {
    throw new RangeError('A set has at least one low point, each a number with a doubt.');
  }
  const sizes = new Map<string, number>();
  for (const { setUp } of lowPoints) sizes.set(setUp, (sizes.get(setUp) ?? 0) + 1);
  const together = sum([...sizes.values()].map((size) => size ** 2));
  const tilt2 = sum(lowPoints.map(({ uTiltMm }) => uTiltMm ** 2)) / n;
  const own2 = sum(lowPoints.map(({ u }) => u ** 2)) / n;
  const apart = n > 1 ? (n ** 2 - together) / (n * (n - 1)) : 0;
  const spread =
    n > 1
      ? lowPointSpread(lowPoints.map(({ value, u }) => ({ value, u: Math.sqrt(u ** 2 + apart * tilt2) })))
          .spreadMm
      : 0;
  const degrees = usual.swings + n - 1;
  const scatter2 = (usual.swings * usual.mm ** 2 + (n - 1) * spread ** 2) / degrees;
  const mean2 = (scatter2 + own2) / n + (tilt2 * together) / n ** 2 + uSharedMm ** 2;
  return {
    meanMm: { value: sum(lowPoints.map(({ value }) => value)) / n, u: Math.sqrt(mean2) },
    scatterMm: Math.sqrt(scatter2),
    degrees,
    setUps: sizes.size,
  };
}
