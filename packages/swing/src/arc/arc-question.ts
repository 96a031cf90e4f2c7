import type { Club } from '../marks/marks.ts';

/** A number with its standard uncertainty; 0 holds it fixed. */
export type Known = { readonly value: number; readonly u: number };

/** The clubhead on one frame: seconds, and mm from the ball at the ball's own scale, the stick level. */
export type ClubheadMark = { readonly timeS: number; readonly xMm: number; readonly zMm: number };

export type ArcPriors = {
  readonly radiusMm: Known;
  readonly speedMmS: Known;
  /** Speed after the ball over speed before it. */
  readonly after: Known;
  /** Kink of the path where the club leaves the turf, radians, + up. */
  readonly kink: Known;
};

export type ArcQuestion = {
  readonly marks: readonly ClubheadMark[];
  readonly framesPerSecond: number;
  readonly planeDeg: Known;
  /** Null when nobody knows how high and how far away the lens stands: then neither attack nor height is told. */
  readonly camera: { readonly lensHeightMm: number; readonly distanceMm: number } | null;
  /** What levels the picture; without a stick on the target line nothing is told. */
  readonly tilt: { readonly uDeg: number } | null;
  /** Standard deviation of one mark each way, mm. */
  readonly clickMm: number;
  /** Way of the clubhead while the shutter is open, mm. */
  readonly blurMm: number;
  readonly priors: ArcPriors;
};

const irons = { radiusMm: { value: 1300, u: 150 }, speedMmS: { value: 39_000, u: 8000 } };
const woods = { radiusMm: { value: 1500, u: 150 }, speedMmS: { value: 44_000, u: 9000 } };
const long = new Set<Club>(['driver', 'fairway', 'hybrid']);

/** What is known of an arc before its marks are read. Common practice, no source. */
export const arcPriors = (club: Club): ArcPriors => ({
  ...(long.has(club) ? woods : irons),
  after: { value: 0.82, u: 0.06 },
  kink: { value: 0, u: 0.02 },
});

/** Tilt of the plane to the ground by club, degrees. Common practice, no source. */
export const usualPlane = (club: Club): Known => {
  if (club === 'driver') return { value: 48, u: 2 };
  if (club === 'fairway' || club === 'hybrid') return { value: 55, u: 3 };
  if (club === 'wedge') return { value: 64, u: 2 };
  return { value: club === '5-iron' ? 59 : 61.5, u: 2 };
};
