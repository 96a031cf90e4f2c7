import { ballMiddleMm } from './camera.ts';

export type ClubSeen = {
  /** Height of the grip end over the ball in the picture, pixels. */
  readonly risePx: number;
  readonly clubLengthMm: number;
  readonly lieDeg: number;
  /** Lens to ball, along the ground, mm. */
  readonly distanceMm: number;
  readonly lensHeightMm: number;
};

/**
 * Focal length of the picture in pixels, from the club at address: its foot is nearer to the lens than its grip end.
 *
 * @returns pixels a unit of slope; a length at depth Z then takes (distance + Z) / focal mm a pixel
 * @throws RangeError when the grip end does not stand above the ball
 * @source pinhole geometry, derived here: rise / f = (Hg - h) / (D + L cos lie) + (h - Hb) / D. Shaft lean is left out:
 * 6 degrees cost 0.6 %. Common practice for the defaults of D and h.
 * @example focalFromClub({ risePx: 300, clubLengthMm: 927, lieDeg: 63, distanceMm: 3900, lensHeightMm: 1000 })
 */
export function focalFromClub(seen: ClubSeen): number {
  const lie = (seen.lieDeg * Math.PI) / 180;
  const gripHeightMm = seen.clubLengthMm * Math.sin(lie);
  const gripDepthMm = seen.clubLengthMm * Math.cos(lie);
  const slope =
    (gripHeightMm - seen.lensHeightMm) / (seen.distanceMm + gripDepthMm) +
    (seen.lensHeightMm - ballMiddleMm) / seen.distanceMm;
  if (!(seen.risePx > 0) || !(slope > 0)) throw new RangeError('The grip end must stand above the ball.');
  return seen.risePx / slope;
}
