import { leastSquares } from '@ballfirst/numbers/least-squares';
import { propagate } from '@ballfirst/numbers/propagate';
import { usualCamera } from '../camera/camera.ts';
import { attackDegOf, heightBehindMm, seenRadiusMm } from './arc-geometry.ts';
import type { ArcQuestion, Known } from './arc-question.ts';
import { type ArcRefusal, refusalBefore, refuseArc } from './arc-refusal.ts';

export type ArcEstimate = {
  /** + ahead of the ball, towards the target. The systematic part is shared by all swings of one set-up. */
  readonly lowPointAheadMm: Known & { readonly uTilt: number };
  readonly radiusMm: Known;
  /** How far the low point moves for each mm by which the radius is put right. */
  readonly lowPointPerRadius: number;
  readonly speedMS: Known;
  /** Null where the camera is not known, or its doubt is too large. */
  readonly attackDeg: Known | null;
  /** Height of the clubhead over the ball's, one grip length (260 mm) behind it. */
  readonly heightOneGripBehindMm: Known | null;
};

const gripLengthMm = 260;
const limits = { lowPointMm: 40, attackDeg: 1.5 };
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** By how much a camera above the ground stretches heights: sin g + cos g h / D. */
export const heightFactor = (planeDeg: number, lensHeightMm: number, distanceMm: number): number =>
  Math.sin(radians(planeDeg)) + (Math.cos(radians(planeDeg)) * lensHeightMm) / distanceMm;

/** L, z0, R, v, time at the ball, speed after, kink. */
type Parameters = readonly [number, number, number, number, number, number, number];

/** Where the clubhead is seen at a time, mm from the ball. */
function seenAt([l, z0, r, v, tb, after, kink]: Parameters, q: number, timeS: number) {
  const since = timeS - tb;
  const psi = Math.asin(Math.max(-1, Math.min(1, -l / r))) + (v / r) * since * (since < 0 ? 1 : after);
  const x = l + r * Math.sin(psi);
  return { x, z: z0 + r * (1 - Math.cos(psi)) * q + (since > 0 ? kink * Math.max(0, x) : 0) };
}

/** Start of the search: the line of x on t, its speed before the ball, and the height there. */
function startOf({ marks, priors }: ArcQuestion): Parameters {
  const before = marks.filter(({ xMm }) => xMm < 0);
  const [first, last] = [before[0], before.at(-1)];
  const speed =
    first && last && last.timeS > first.timeS
      ? (last.xMm - first.xMm) / (last.timeS - first.timeS)
      : priors.speedMmS.value;
  const tb = last ? last.timeS - last.xMm / speed : 0;
  return [80, -5, priors.radiusMm.value, speed, tb, priors.after.value, priors.kink.value];
}

/**
 * Low point, attack and height of the clubhead's arc from its marks on both sides of the ball.
 *
 * @param question - marks in time order, at the ball's scale and level with the stick
 * @returns the estimate with its doubt, or why there is none; refused on the doubt alone, never on its ratio to the value
 * @throws RangeError on bad numbers, frames out of order, or marks that no arc fits
 * @source circle in a tilted plane under a pinhole camera, derived here: x = L + R sin(psi), z = z0 + R (1 - cos(psi)) q;
 * priors are common practice, no source; worked values in the reference tests
 */
export function estimateArc(question: ArcQuestion): ArcEstimate | ArcRefusal {
  const refusal = refusalBefore(question);
  if (refusal !== null) return refusal;
  const { marks, priors, planeDeg, camera, clickMm, blurMm, tilt } = question;
  if (!(clickMm > 0 && blurMm >= 0)) throw new RangeError('A mark needs a positive doubt.');
  const seen = camera ?? usualCamera;
  const q = heightFactor(planeDeg.value, seen.lensHeightMm, seen.distanceMm);
  const alongMm = Math.sqrt(clickMm ** 2 + blurMm ** 2 / 12);
  const known: readonly (Known | null)[] = [
    null,
    null,
    priors.radiusMm,
    priors.speedMmS,
    null,
    priors.after,
    priors.kink,
  ];
  const start = startOf(question);
  const free = known.flatMap((prior, i) => (prior?.u === 0 ? [] : [i]));
  const whole = (x: readonly number[]): Parameters => {
    const all = [...start];
    known.forEach((prior, i) => {
      if (prior?.u === 0) all[i] = prior.value;
    });
    free.forEach((i, j) => {
      all[i] = x[j] ?? Number.NaN;
    });
    return all as unknown as Parameters;
  };
  const stepSizes = [0.01, 0.01, 0.1, 1, 1e-7, 1e-5, 1e-6];
  const { parameters, covariance } = leastSquares({
    residuals: (x) => {
      const all = whole(x);
      const misses = marks.flatMap(({ timeS, xMm, zMm }) => {
        const at = seenAt(all, q, timeS);
        return [(at.x - xMm) / alongMm, (at.z - zMm) / clickMm];
      });
      const pulls = free.flatMap((i) => {
        const prior = known[i];
        return prior ? [((all[i] ?? 0) - prior.value) / prior.u] : [];
      });
      return [...misses, ...pulls];
    },
    start: free.map((i) => start[i] ?? 0),
    steps: free.map((i) => stepSizes[i] ?? 1),
  });
  const fitted = whole(parameters);
  const place = (i: number) => free.indexOf(i);
  const uOf = (i: number) => Math.sqrt(Math.max(0, covariance[place(i)]?.[place(i)] ?? 0));
  const [ahead, , radius, speed] = fitted;
  const arc = { radiusMm: radius, planeDeg: planeDeg.value };
  const uTilt = seenRadiusMm(arc) * radians(tilt?.uDeg ?? 0);
  const low = { value: ahead, u: Math.hypot(uOf(0), uTilt), uTilt };
  if (!(low.u <= limits.lowPointMm)) return refuseArc('doubt-too-large');

  const both = covariance[place(0)]?.[place(2)] ?? 0;
  const joint = [
    [low.u ** 2, both, 0],
    [both, uOf(2) ** 2, 0],
    [0, 0, planeDeg.u ** 2],
  ];
  const told = (f: (l: number, r: number, g: number) => number): Known => {
    const { value, u } = propagate(
      ([l = 0, r = 0, g = 0]) => f(l, r, g),
      [ahead, radius, planeDeg.value],
      joint,
    );
    return { value, u };
  };
  const attack = told((l, r, g) => attackDegOf(l, { radiusMm: r, planeDeg: g }));
  const isTold = camera !== null && attack.u <= limits.attackDeg;
  const height = (l: number, r: number, g: number) =>
    heightBehindMm(gripLengthMm, l, { radiusMm: r, planeDeg: g });
  return {
    lowPointAheadMm: low,
    radiusMm: { value: radius, u: uOf(2) },
    lowPointPerRadius: uOf(2) > 0 ? both / uOf(2) ** 2 : 0,
    speedMS: { value: speed / 1000, u: uOf(3) / 1000 },
    attackDeg: isTold ? attack : null,
    heightOneGripBehindMm: isTold ? told(height) : null,
  };
}
