/** What the spread of a measurement is made of, and how many swings stand on each side. */
export type Repeatability = {
  /** SD between swings of one set-up, in the unit of the measurement, >= 0. */
  readonly withinSd: number;
  /** SD between set-ups of the camera, same unit, >= 0. */
  readonly betweenSetUpsSd: number;
  readonly swingsBefore: number;
  readonly swingsAfter: number;
  /** Two-sided 95 % quantile: 1.96, or Student's t where withinSd was estimated from these few swings. */
  readonly quantile?: number;
};

/**
 * The smallest change between two means that is more than chance at 95 %: q sqrt(s_w^2 (1/k1 + 1/k2) + 2 s_s^2).
 *
 * @returns same unit as the SDs
 * @throws RangeError on a negative SD or fewer than one swing on a side
 * @source Weir 2005 (minimal detectable change); the term between set-ups is our own
 * @example minimalDetectableChange({ withinSd: 2, betweenSetUpsSd: 2, swingsBefore: 5, swingsAfter: 5 }) // 6.07
 */
export const minimalDetectableChange = ({
  withinSd,
  betweenSetUpsSd,
  swingsBefore,
  swingsAfter,
  quantile = 1.959964,
}: Repeatability): number => {
  if (!(withinSd >= 0 && betweenSetUpsSd >= 0)) throw new RangeError('A spread is zero or more.');
  if (!(swingsBefore >= 1 && swingsAfter >= 1)) throw new RangeError('Each side needs a swing at least.');
  return (
    quantile * Math.sqrt(withinSd ** 2 * (1 / swingsBefore + 1 / swingsAfter) + 2 * betweenSetUpsSd ** 2)
  );
};
