import { lengthOf, minus, type Spot } from './space.ts';
import { headOverSoleMm } from './stance.ts';
import type { Swing } from './swing.ts';

/** The clubhead near the ball, without lens or marks. */
export type TrueArc = {
  /** Where the arc is lowest, target-side of the ball, as if the turf did not throw the club up; mm. */
  readonly lowPointAheadMm: number;
  /** Angle of the path to the ground as the face meets the ball, degrees, down is negative. */
  readonly attackDeg: number;
  /** How much higher than at the ball the head is one grip length behind it on the way down, mm. */
  readonly heightOneGripLengthBehindMm: number;
  /** Radius of the curved path at the ball, mm. */
  readonly radiusMm: number;
  readonly speedBeforeMps: number;
  readonly speedAfterMps: number;
  /** Direction of the path at impact, + right of the target for a right-hander, degrees. */
  readonly pathDeg: number;
  /** Sole over flat ground as the face meets the ball, mm; below is negative. */
  readonly soleHeightAtBallMm: number;
  /** How far behind the ball the sole first meets flat ground, mm; negative ahead of it; null when it never does. */
  readonly groundBehindBallMm: number | null;
};

/** The grip of a usual iron, mm; common practice. */
export const gripLengthMm = 260;
const stepS = 0.0002;
const degrees = 180 / Math.PI;

export function trueArc(swing: Swing): TrueArc {
  const { impact } = swing.timing;
  const head = (timeS: number): Spot => swing.clubWithoutTurf(timeS).head;
  const velocity = (timeS: number, h = 2e-5): Spot => {
    const apart = minus(head(timeS + h), head(timeS - h));
    return { x: apart.x / (2 * h), y: apart.y / (2 * h), z: apart.z / (2 * h) };
  };
  const justBefore = impact - 5e-5;
  const v = velocity(justBefore);
  const level = Math.hypot(v.x, v.z);
  const early = velocity(impact - 0.0012, 0.0002);
  const late = velocity(impact - 0.0004, 0.0002);
  const speed = lengthOf(v);
  // Curvature |v x a| / |v|3.
  const a: Spot = {
    x: (late.x - early.x) / 0.0008,
    y: (late.y - early.y) / 0.0008,
    z: (late.z - early.z) / 0.0008,
  };
  const cross = Math.hypot(v.y * a.z - v.z * a.y, v.z * a.x - v.x * a.z, v.x * a.y - v.y * a.x);
  const near = nearBall(head, impact);
  const atBall = yWhere(near, 0);
  return {
    lowPointAheadMm: lowestX(near),
    attackDeg: Math.atan2(v.y, level) * degrees,
    heightOneGripLengthBehindMm: yWhere(near, -gripLengthMm) - atBall,
    radiusMm: speed ** 3 / cross,
    speedBeforeMps: speed / 1000,
    speedAfterMps: lengthOf(velocity(impact + 5e-5)) / 1000,
    pathDeg: Math.atan2(v.z, v.x) * degrees,
    soleHeightAtBallMm: head(impact).y - headOverSoleMm,
    groundBehindBallMm: groundBehind(near),
  };
}

/** The clubhead every fifth of a millisecond around the ball, in order. */
const nearBall = (head: (timeS: number) => Spot, impact: number): readonly Spot[] =>
  Array.from({ length: 300 }, (_, i) => head(impact + (i - 150) * stepS));

/** Height where the head passes a place along the line, by straight pieces of some 7 mm (sagitta below .01 mm). */
function yWhere(near: readonly Spot[], x: number): number {
  const i = near.findIndex((spot) => spot.x > x);
  const from = near[i - 1];
  const to = near[i];
  if (from === undefined || to === undefined) throw new RangeError('The clubhead does not pass there');
  return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
}

/** The lowest place, by a parabola through the three lowest. */
function lowestX(near: readonly Spot[]): number {
  let i = 1;
  for (let k = 1; k < near.length - 1; k += 1) if ((near[k]?.y ?? 0) < (near[i]?.y ?? 0)) i = k;
  const [a, b, c] = [near[i - 1], near[i], near[i + 1]];
  if (a === undefined || b === undefined || c === undefined) throw new RangeError('The arc has no low point');
  const left = (b.y - a.y) / (b.x - a.x);
  const right = (c.y - b.y) / (c.x - b.x);
  const bend = (right - left) / ((c.x - a.x) / 2);
  return (a.x + b.x) / 2 - left / bend;
}

function groundBehind(near: readonly Spot[]): number | null {
  const i = near.findIndex((spot) => spot.y < headOverSoleMm);
  const from = near[i - 1];
  const to = near[i];
  if (from === undefined || to === undefined) return null;
  return -(from.x + ((to.x - from.x) * (from.y - headOverSoleMm)) / (from.y - to.y));
}
