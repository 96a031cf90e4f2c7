import { bisect } from '@ballfirst/numbers/bisect';
import { normalCdf } from '@ballfirst/numbers/normal-cdf';
import { studentCdf } from '@ballfirst/numbers/student-cdf';
import type { Known } from './arc-question.ts';

/** A set of swings: where the low point lies, how deep the arc is, how it is curved. */
export type SwingSet = {
  /** + ahead of the ball; u is the scatter of the player. */
  readonly lowPointAheadMm: Known;
  /** Degrees of freedom of that scatter; absent: it is known. */
  readonly degrees?: number;
  /** Depth of the arc below the ground; u its scatter. Negative: it stays above. */
  readonly depthMm: Known;
  /** R / sin(plane), mm. */
  readonly seenRadiusMm: number;
};

/** Where a thin shot begins: the leading edge more than this above the ground at the ball, mm. Derived. */
const thinMm = 4;
const steps = 96;
const widest = 6;
/** How wide halving may leave a way out, and a depth; mm. */
const within = { way: 0.05, depth: 1e-7 };

const check = ({ lowPointAheadMm, depthMm, seenRadiusMm, degrees }: SwingSet): void => {
  for (const [name, { value, u }] of Object.entries({ 'low point': lowPointAheadMm, depth: depthMm })) {
    if (!Number.isFinite(value) || !(u >= 0 && Number.isFinite(u))) {
      throw new RangeError(`The ${name} is not a number with a scatter.`);
    }
  }
  if (!(seenRadiusMm > 0 && Number.isFinite(seenRadiusMm))) throw new RangeError('The radius is positive.');
  if (degrees !== undefined && !(degrees > 0)) throw new RangeError('Degrees of freedom are positive.');
};

/** P(low point < x). */
const belowLow = ({ lowPointAheadMm: { value, u }, degrees }: SwingSet, x: number): number => {
  if (u === 0) return value < x ? 1 : 0;
  const z = (x - value) / u;
  return degrees === undefined ? normalCdf(z) : studentCdf(z, degrees);
};

/** Mean of f over the depths from `fromMm` up, by the middle rule within six standard deviations. */
const overDepth = (
  { depthMm: { value, u } }: SwingSet,
  fromMm: number,
  f: (depthMm: number) => number,
): number => {
  if (u === 0) return value > fromMm ? f(value) : 0;
  const low = Math.max(-widest, (fromMm - value) / u);
  const width = (widest - low) / steps;
  if (!(width > 0)) return 0;
  let sum = 0;
  let below = normalCdf(low);
  for (let i = 1; i <= steps; i += 1) {
    const z = low + width * i;
    const upTo = normalCdf(z);
    sum += (upTo - below) * f(value + u * (z - width / 2));
    below = upTo;
  }
  return sum;
};

/** P(depth <= mm). */
const belowDepth = ({ depthMm: { value, u } }: SwingSet, mm: number): number => {
  if (u === 0) return value <= mm ? 1 : 0;
  return normalCdf((mm - value) / u);
};

/**
 * Chance that the club meets the ground more than so far behind the ball.
 *
 * @param behindMm - 0 and more; 30 is where a shot is called fat (common practice)
 * @throws RangeError on numbers that are not finite or a radius that is not positive
 * @source fat distance F = sqrt(2 rho b) - L with L and b scattered normally (L by t where its scatter is estimated)
 * @example fatChance({ lowPointAheadMm: { value: 65.5, u: 25 }, depthMm: { value: 4.54, u: 2 }, seenRadiusMm: 1472.34 }, 30) // 0.693
 */
export function fatChance(set: SwingSet, behindMm = 30): number {
  check(set);
  return overDepth(set, 0, (b) => belowLow(set, Math.sqrt(2 * set.seenRadiusMm * b) - behindMm));
}

/** Chance that the club never meets the ground. @throws RangeError as `fatChance` */
export function missesGroundChance(set: SwingSet): number {
  check(set);
  return belowDepth(set, 0);
}

/**
 * How far ahead of its lowest point the arc meets the ground, on average; 0 where it does not.
 *
 * @throws RangeError as `fatChance`
 * @source mean of sqrt(2 rho b): less than at the mean depth, since the root is curved
 */
export function meanHalfChordMm(set: SwingSet): number {
  check(set);
  return overDepth(set, 0, (b) => Math.sqrt(2 * set.seenRadiusMm * b));
}

/**
 * Chance of a thin shot: the edge more than 4 mm above the ground at the ball.
 *
 * @throws RangeError as `fatChance`
 * @source L^2 / (2 rho) - b > 4 mm
 */
export function thinChance(set: SwingSet): number {
  check(set);
  const reaching = overDepth(set, -thinMm, (b) => {
    const edge = Math.sqrt(2 * set.seenRadiusMm * (b + thinMm));
    return 1 - belowLow(set, edge) + belowLow(set, -edge);
  });
  return belowDepth(set, -thinMm) + reaching;
}

export type WayOut = { readonly byMm: number; readonly thin: number; readonly missesGround: number };
export type WaysOut = { readonly forward: WayOut; readonly higher: WayOut };

/**
 * What would bring the chance of a fat shot down to a goal: the low point so far forward, or the arc so much higher, and
 * what either costs in thin shots.
 *
 * @param goal - chance, strictly between 0 and 1
 * @returns 0 mm where the goal is met already
 * @throws RangeError when no move of 500 mm forward or 50 mm up reaches it
 * @example waysOut(set).forward.byMm // 63
 */
export function waysOut(set: SwingSet, goal = 0.1, behindMm = 30): WaysOut {
  check(set);
  if (!(goal > 0 && goal < 1)) throw new RangeError('The goal is a chance strictly between 0 and 1.');
  const moved = (key: 'lowPointAheadMm' | 'depthMm', by: number): SwingSet => ({
    ...set,
    [key]: { ...set[key], value: set[key].value + by },
  });
  const way = (moveBy: (mm: number) => SwingSet, most: number): WayOut => {
    if (fatChance(moveBy(most), behindMm) > goal) throw new RangeError('No such move reaches the goal.');
    const byMm =
      fatChance(set, behindMm) <= goal
        ? 0
        : bisect((mm) => -fatChance(moveBy(mm), behindMm), -goal, 0, most, within.way);
    return { byMm, thin: thinChance(moveBy(byMm)), missesGround: missesGroundChance(moveBy(byMm)) };
  };
  return {
    forward: way((mm) => moved('lowPointAheadMm', mm), 500),
    higher: way((mm) => moved('depthMm', -mm), 50),
  };
}

/**
 * Depth of the arc that would bring about the share of fat shots a student counted.
 *
 * @param share - of ten balls or more, strictly between 0 and 1
 * @param scatterMm - scatter of the depth
 * @param degrees - degrees of freedom of the scatter of the low point; absent: it is known
 * @throws RangeError when no depth from 0 to 60 mm gives this share
 */
export function depthFromFatShare(
  share: number,
  lowPointAheadMm: Known,
  seenRadiusMm: number,
  scatterMm = 2,
  behindMm = 30,
  degrees?: number,
): Known {
  if (!(share > 0 && share < 1))
    throw new RangeError('The share of fat shots lies strictly between 0 and 1.');
  const arc = { lowPointAheadMm, seenRadiusMm, ...(degrees === undefined ? {} : { degrees }) };
  const chance = (value: number) => fatChance({ ...arc, depthMm: { value, u: scatterMm } }, behindMm);
  const [low, high] = [-20, 60];
  if (chance(low) > share || chance(high) < share) throw new RangeError('No depth gives this share.');
  return { value: bisect(chance, share, low, high, within.depth), u: scatterMm };
}
