import type { Known } from './arc-question.ts';
import type { ArcReading } from './read-arc.ts';

export type SharedRadius = {
  readonly radiusMm: Known;
  /** The low points at that radius, in the order given, each with the doubt of its own marks alone. */
  readonly lowPoints: readonly Known[];
  /** What the doubt of the radius adds to all low points alike, mm. */
  readonly uSharedMm: number;
};

/**
 * One radius for all swings of a club, and the low points at it. Each swing was read with the same prior; it counts once.
 *
 * @param prior - what was known of the radius before the marks; u > 0
 * @throws RangeError on no swing, or numbers that are not finite
 * @source normal posteriors joined: precision 1/s0^2 + sum(1/u_i^2 - 1/s0^2); a low point given the radius moves by
 * cov(L, R)/var(R) and loses that part of its variance. Derived here.
 * @example shareRadius([{ lowPointMm: 80, uOwnMm: 18, uTiltMm: 13, radiusMm: 1250, uRadiusMm: 90, perRadius: 0.1 }], { value: 1300, u: 150 })
 */
export function shareRadius(arcs: readonly ArcReading[], prior: Known): SharedRadius {
  if (arcs.length === 0) throw new RangeError('No swing tells a radius.');
  if (!arcs.flatMap((arc) => Object.values(arc)).every(Number.isFinite)) {
    throw new RangeError('A swing of the set is not in numbers.');
  }
  if (!(prior.u > 0)) throw new RangeError('A radius that is shared was in doubt before.');
  const before = 1 / prior.u ** 2;
  let precision = before;
  let pull = prior.value * before;
  for (const { radiusMm, uRadiusMm } of arcs) {
    // Marks never make a radius less certain than it was.
    const own = 1 / Math.min(prior.u, Math.max(1e-3, uRadiusMm)) ** 2;
    precision += own - before;
    pull += radiusMm * own - prior.value * before;
  }
  const radius = { value: pull / precision, u: Math.sqrt(1 / precision) };
  const slope = arcs.reduce((sum, { perRadius }) => sum + perRadius, 0) / arcs.length;
  return {
    radiusMm: radius,
    lowPoints: arcs.map(({ lowPointMm, uOwnMm, radiusMm, uRadiusMm, perRadius }) => ({
      value: lowPointMm + perRadius * (radius.value - radiusMm),
      u: Math.sqrt(Math.max(0, uOwnMm ** 2 - (perRadius * uRadiusMm) ** 2)),
    })),
    uSharedMm: Math.abs(slope) * radius.u,
  };
}
