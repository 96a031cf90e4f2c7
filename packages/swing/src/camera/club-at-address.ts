import type { Club } from '../marks/marks.ts';

export type ClubAtAddress = {
  readonly lengthMm: number;
  readonly uLengthMm: number;
  /** Angle between shaft and ground as the club is held. */
  readonly lieDeg: number;
  readonly uLieDeg: number;
};

// Men's steel set: length in mm and lie in degrees. From memory and common practice; no standard exists.
const usual: Readonly<Record<Club, readonly [lengthMm: number, lieDeg: number]>> = {
  driver: [1152, 58],
  fairway: [1092, 57.5],
  hybrid: [1010, 59],
  '5-iron': [965, 61],
  '6-iron': [952, 61.5],
  '7-iron': [940, 62],
  '8-iron': [927, 63],
  '9-iron': [914, 63.5],
  wedge: [902, 64],
};

/**
 * How long a club is and how it stands at address.
 *
 * @returns usual length and lie with the doubt between sets (an inch shorter for many women, hands high or low);
 * common practice, no source
 */
export function clubAtAddress(club: Club): ClubAtAddress {
  const [lengthMm, lieDeg] = usual[club];
  return { lengthMm, uLengthMm: lengthMm * 0.027, lieDeg, uLieDeg: 3 };
}
