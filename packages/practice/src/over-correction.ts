import { betaCdf } from '@ballfirst/numbers/beta-cdf';
import { betaQuantile } from '@ballfirst/numbers/beta-quantile';

export type Share = { readonly count: number; readonly balls: number };
export type OverCorrectionQuestion = {
  /** The opposite miss of the fault worked on, before and since. */
  readonly before: Share;
  readonly after: Share;
  /** The cause's measurement before and since, and its band; an open edge is null. */
  readonly measurement: {
    readonly before: number;
    readonly after: number;
    readonly low: number | null;
    readonly high: number | null;
  };
};

/** As sure as this that the opposite miss has grown, it is called so. Common practice, no source. */
const sureEnough = 0.8;
const slices = 200;

/**
 * P(the second share is larger than the first), with a half added to each count.
 *
 * @throws RangeError on counts that are none
 * @source two Beta posteriors with Jeffreys' prior, integrated over the quantiles of the second
 * @example growthProbability({ count: 0, balls: 10 }, { count: 4, balls: 10 }) // 0.98
 */
export const growthProbability = (before: Share, after: Share): number => {
  for (const { count, balls } of [before, after]) {
    const whole = Number.isInteger(count) && Number.isInteger(balls);
    if (!whole || count < 0 || balls < 1 || count > balls) {
      throw new RangeError('A share counts whole balls, no more than there were.');
    }
  }
  let sum = 0;
  for (let slice = 0; slice < slices; slice += 1) {
    const share = betaQuantile((slice + 0.5) / slices, after.count + 0.5, after.balls - after.count + 0.5);
    sum += betaCdf(share, before.count + 0.5, before.balls - before.count + 0.5);
  }
  return sum / slices;
};

const sideOf = (value: number, low: number | null, high: number | null): -1 | 0 | 1 => {
  if (low !== null && value < low) return -1;
  return high !== null && value > high ? 1 : 0;
};

/**
 * Whether a drill has worked so well that the opposite miss comes: it grows while the cause's measurement moves into its
 * band or through it. A sign of progress, no new fault.
 *
 * @returns 'into' or 'through' the band; null: no over-correction
 * @throws RangeError on counts or values that are none
 * @source common practice: low point too far forward after fat is progress
 */
export const overCorrection = (question: OverCorrectionQuestion): 'into' | 'through' | null => {
  const { before, after, measurement } = question;
  const { low, high } = measurement;
  if (!Number.isFinite(measurement.before) || !Number.isFinite(measurement.after)) {
    throw new RangeError('A measurement is a number.');
  }
  const then = sideOf(measurement.before, low, high);
  const now = sideOf(measurement.after, low, high);
  if (then === 0 || now === then || growthProbability(before, after) < sureEnough) return null;
  return now === 0 ? 'into' : 'through';
};
