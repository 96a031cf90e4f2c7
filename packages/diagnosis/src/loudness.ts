import { ratioLimit } from './weights.ts';

/** More than two full signs can say is clear enough: from there on it only counts what is gained. */
const clear = 2 * ratioLimit;

/**
 * How loudly the signs of a cause speak for it, in steps of twice as likely; 0: they say nothing, below: against it.
 *
 * @param logRatio - log likelihood ratio of its signs together, natural logarithm
 * @returns a whole number, at most 9
 * @example loudness(Math.log(8)) // 3
 */
export const loudness = (logRatio: number): number => Math.round(Math.min(logRatio, clear) / Math.LN2);
