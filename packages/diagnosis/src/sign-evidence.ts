import type { Sign } from '@ballfirst/library/types';
import { clip } from '@ballfirst/numbers/clip';
import { gradedSignLogRatio } from '@ballfirst/numbers/graded-sign';
import { observedSignLogRatio } from '@ballfirst/numbers/observed-sign';
import type { Reading, Unit } from '@ballfirst/swing/measurement';
import type { Evidence, Known } from './evidence.ts';

/** No single sign counts more than twenty to one, either way. Common practice, no source. */
const limit = Math.log(20);

/** Spread between players where a sign states none. Common practice, no source. */
const usualSd: Readonly<Record<Unit, number>> = { mm: 20, percent: 5, deg: 5, ratio: 0.4 };

/** How far past the edge in the sign's direction; past the nearer edge where either counts. */
const pastEdge = ({ direction = 'above', edge }: Sign, { value, band }: Reading): number | null => {
  const high = edge ?? band?.high ?? null;
  const low = edge ?? band?.low ?? null;
  const over = high === null ? null : value - high;
  const under = low === null ? null : low - value;
  if (direction === 'above') return over;
  if (direction === 'below') return under;
  return over === null || under === null ? (over ?? under) : Math.max(over, under);
};

/**
 * What one sign says about its cause.
 *
 * @returns null when nothing was read or seen, or no edge is known: the ratio is 1
 * @source graded-sign.ts and observed-sign.ts; an observation that cannot be told says nothing
 */
export function signEvidence(sign: Sign, { readings, answers }: Known): Evidence | null {
  if (sign.kind === 'observed') {
    const answer = answers.get(sign.key) ?? null;
    if (answer === null || answer === 'cannot-tell') return null;
    const logRatio = observedSignLogRatio(answer === 'yes', sign.sensitivity, sign.specificity);
    return { sign, logRatio: clip(logRatio, -limit, limit), weight: 1, reading: null, answer };
  }
  const reading = readings.get(sign.key);
  const past = reading === undefined ? null : pastEdge(sign, reading);
  if (reading === undefined || past === null) return null;
  const { sensitivity, specificity } = sign;
  const sd = sign.sd ?? usualSd[reading.unit];
  const logRatio = gradedSignLogRatio({ past, u: reading.u, sd, sensitivity, specificity });
  const atMost = sign.ratioAtMost === undefined ? limit : Math.min(limit, Math.log(sign.ratioAtMost));
  const weight = (atMost / limit) * (sd ** 2 / (sd ** 2 + reading.u ** 2));
  return { sign, logRatio: clip(logRatio, -limit, atMost), weight, reading, answer: null };
}
