import { ironArc } from './constants.ts';

/** The way down of a sound 8-iron: common practice, no source. */
export const soundAttackDeg = -4.5;

/**
 * How high above its height at the ball the clubhead is, so far behind the ball, on a circle in a tilted plane.
 *
 * @param behindMm - distance behind the ball along the target line, 0..radius less the low point
 * @param attackDeg - attack angle at the ball, negative down, between -30 and 30
 * @returns mm
 * @throws RangeError where the circle does not reach so far back
 * @source geometry of a circle: sin(attack) = sin(psi) sin(plane), height = R (1 - cos psi) sin(plane)
 * @example arcHeightBehindMm(260) // 44.4: one grip length behind, one ball high
 */
export const arcHeightBehindMm = (
  behindMm: number,
  attackDeg = soundAttackDeg,
  arc: { readonly radiusMm: number; readonly planeDeg: number } = ironArc,
): number => {
  const plane = (arc.planeDeg * Math.PI) / 180;
  const sinAtBall = Math.sin((attackDeg * Math.PI) / 180) / Math.sin(plane);
  const sinBehind = sinAtBall - behindMm / arc.radiusMm;
  if (!(Math.abs(sinAtBall) < 1 && Math.abs(sinBehind) < 1))
    throw new RangeError('The arc does not reach there.');
  return arc.radiusMm * Math.sin(plane) * (Math.sqrt(1 - sinAtBall ** 2) - Math.sqrt(1 - sinBehind ** 2));
};
