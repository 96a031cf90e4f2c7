export type ClubSeenFromBehind = {
  /** Where the upper end of the club lies from the lower in the picture, pixels. */
  readonly levelPx: number;
  readonly upPx: number;
  /** True length between the two, mm. */
  readonly lengthMm: number;
  /** Lean of the shaft towards the target, out of the plane of the picture. */
  readonly leanDeg: number;
  /** Lens to ball, along the target line, mm. */
  readonly distanceMm: number;
};

/**
 * Focal length of a picture from behind, in pixels, from the club at address: there it stands in the plane of the
 * picture, shortened only by its lean towards the target.
 *
 * @returns pixels a unit of slope; a length at depth Z then takes (distance + Z) / focal mm a pixel
 * @throws RangeError when the two ends coincide or the length is not positive
 * @source pinhole geometry, derived here: pixels = f length cos(lean) / distance
 * @example focalFromClubBehind({ levelPx: 150, upPx: 290, lengthMm: 927, leanDeg: 0, distanceMm: 3900 }) // 1373.6
 */
export function focalFromClubBehind(seen: ClubSeenFromBehind): number {
  const pixels = Math.hypot(seen.levelPx, seen.upPx);
  const shown = seen.lengthMm * Math.cos((seen.leanDeg * Math.PI) / 180);
  if (!(pixels > 0) || !(shown > 0)) throw new RangeError('The two ends of the club at address coincide.');
  return (pixels * seen.distanceMm) / shown;
}
