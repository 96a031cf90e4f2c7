/** The clubhead near the ground: a circle of this radius in a plane tilted by this angle to the ground. */
export type Arc = { readonly radiusMm: number; readonly planeDeg: number };

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = (angle: number) => (angle * 180) / Math.PI;

const checked = ({ radiusMm, planeDeg }: Arc): { readonly r: number; readonly g: number } => {
  if (!(radiusMm > 0 && Number.isFinite(radiusMm))) throw new RangeError('The radius of an arc is positive.');
  if (!(planeDeg > 0 && planeDeg < 90))
    throw new RangeError('The plane of an arc is tilted by 0 to 90 degrees.');
  return { r: radiusMm, g: radians(planeDeg) };
};

/** Sine of an angle, or a RangeError when the circle does not reach so far. */
const reached = (sine: number): number => {
  if (!(Math.abs(sine) < 1)) throw new RangeError('The arc does not reach there.');
  return sine;
};

/**
 * How far ahead of the ball the arc is lowest.
 *
 * @param attackDeg - direction of the clubhead at the ball, negative down
 * @returns mm, + towards the target; negative for an upward strike
 * @throws RangeError where the plane cannot be met at this angle
 * @source geometry of a circle: L = R sin(-attack) / sin(plane)
 * @example lowPointAheadMm(-4.5, { radiusMm: 1300, planeDeg: 62 }) // 115.5
 */
export function lowPointAheadMm(attackDeg: number, arc: Arc): number {
  const { r, g } = checked(arc);
  return -r * reached(Math.sin(radians(attackDeg)) / Math.sin(g));
}

/**
 * Attack at the ball from where the arc is lowest.
 *
 * @param aheadMm - mm, + towards the target
 * @throws RangeError when the low point lies farther away than the radius
 * @source geometry of a circle, the inverse of `lowPointAheadMm`
 * @example attackDegOf(115.5, { radiusMm: 1300, planeDeg: 62 }) // -4.5
 */
export function attackDegOf(aheadMm: number, arc: Arc): number {
  const { r, g } = checked(arc);
  return -degrees(Math.asin(reached(aheadMm / r) * Math.sin(g)));
}

/**
 * How far the path of the clubhead at the ball points to the trail side of its swing direction, because the plane is
 * tilted and the club still on its way down.
 *
 * @returns degrees, + to the right of the target for a right-hander
 * @throws RangeError where the plane cannot be met at this angle
 * @source geometry of a circle: -atan(tan(psi) cos(plane)), sin(attack) = sin(psi) sin(plane)
 * @example pathLessDirectionDeg(-4.5, 62) // 2.398
 */
export function pathLessDirectionDeg(attackDeg: number, planeDeg: number): number {
  const { g } = checked({ radiusMm: 1, planeDeg });
  const psi = Math.asin(reached(Math.sin(radians(attackDeg)) / Math.sin(g)));
  return -degrees(Math.atan(Math.tan(psi) * Math.cos(g)));
}

/**
 * Height of the clubhead over its height at the ball, so far behind the ball on the way down.
 *
 * @param behindMm - along the target line, away from the target
 * @param aheadMm - the low point, + ahead of the ball
 * @throws RangeError where the circle does not reach
 * @source geometry of a circle: R sin(plane) (cos(psi at the ball) - cos(psi there))
 * @example heightBehindMm(260, 115.5, { radiusMm: 1300, planeDeg: 62 }) // 44.4
 */
export function heightBehindMm(behindMm: number, aheadMm: number, arc: Arc): number {
  const { r, g } = checked(arc);
  const atBall = reached(aheadMm / r);
  const there = reached((aheadMm + behindMm) / r);
  return r * Math.sin(g) * (Math.sqrt(1 - atBall ** 2) - Math.sqrt(1 - there ** 2));
}

/**
 * Half of the way the arc runs below flat ground.
 *
 * @param depthMm - how far below the ground the arc is lowest, >= 0
 * @throws RangeError on a negative depth or one below the circle
 * @source geometry of a circle, exact: R sin(psi), cos(psi) = 1 - b / (R sin(plane))
 * @example groundHalfChordMm(4.54, { radiusMm: 1300, planeDeg: 62 }) // 115.51
 */
export function groundHalfChordMm(depthMm: number, arc: Arc): number {
  const { r, g } = checked(arc);
  if (!(depthMm >= 0)) throw new RangeError('The depth of an arc is 0 or more.');
  const cosine = 1 - depthMm / (r * Math.sin(g));
  return r * Math.sqrt(1 - reached(cosine) ** 2 || 0);
}

/** Radius of the parabola that a camera square to the target line sees near the low point, mm. */
export const seenRadiusMm = (arc: Arc): number => {
  const { r, g } = checked(arc);
  return r / Math.sin(g);
};
