/**
 * Where a phone usually stands when nobody has measured it: value and standard uncertainty. Common practice, no source:
 * 3 to 5 m from the ball, lens at hand height, square to the target line (from behind: along it) within 4 degrees,
 * upright within 1.5 degrees.
 */
export const usualCamera = {
  distanceMm: 3900,
  uDistanceMm: 550,
  lensHeightMm: 1000,
  uLensHeightMm: 200,
  yawDeg: 0,
  uYawDeg: 4,
  /** How far the phone is turned about its own axis. */
  rollDeg: 0,
  uRollDeg: 1.5,
  /** How far a shaft leans towards the target at address, seen from behind as a shorter club. */
  shaftLeanDeg: 3,
  uShaftLeanDeg: 4,
  /** Field of the long side, used only for ratios when no length is known. */
  longSideFieldDeg: 66,
  uFocalShare: 0.1,
} as const;

/** Height of the middle of the ball: half of 42.67 mm (Equipment Rules, diameter at least 1.680 inches). */
export const ballMiddleMm = 21.335;
