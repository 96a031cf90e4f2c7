import type { Sign } from '@ballfirst/library/types';
import { normalQuantile } from '@ballfirst/numbers/normal-quantile';
import type { Reading, Unit } from '@ballfirst/swing/measurement';
import { ratioLimit } from './weights.ts';

/** Spread between players where a sign states none. Common practice, no source. */
const usualSd: Readonly<Record<Unit, number>> = { mm: 20, percent: 5, deg: 5, ratio: 0.4 };

/** A sign with its reading: where players without the cause stand, and where the cause moves them. Unit of the reading. */
export type ReadSign = {
  readonly sign: Sign;
  readonly reading: Reading;
  /** 1: past its edge means more, -1: less. */
  readonly towards: 1 | -1;
  /** Spread between players. */
  readonly sd: number;
  /** Middle of the players without the cause. */
  readonly without: number;
  /** From there to the middle of those with it, with its sign. */
  readonly shift: number;
  /** Most that it may say for its cause, natural logarithm. */
  readonly atMost: number;
};

const quantiles = new Map<number, number>();
/** The library has a dozen different shares; each quantile is worked out once. */
function quantileOf(share: number): number {
  const known = quantiles.get(share);
  if (known !== undefined) return known;
  const quantile = normalQuantile(share);
  quantiles.set(share, quantile);
  return quantile;
}

/** The edge in the sign's direction, and that direction; the nearer edge where either counts. */
function edgeOf({ direction = 'above', edge }: Sign, { value, band }: Reading) {
  const high = edge ?? band?.high ?? null;
  const low = edge ?? band?.low ?? null;
  const above = high === null ? null : { at: high, towards: 1 as const, past: value - high };
  const below = low === null ? null : { at: low, towards: -1 as const, past: low - value };
  if (direction === 'above') return above;
  if (direction === 'below') return below;
  if (above === null || below === null) return above ?? below;
  return above.past >= below.past ? above : below;
}

/**
 * A measured sign with the reading it is read from.
 *
 * @returns null when nothing was read or no edge is known: it says nothing
 * @throws RangeError when the reading or its doubt is no number, or a share of the sign lies outside 0..1
 * @source equal-variance normal model (Green & Swets 1966, chapter 3): the edge has the stated sensitivity and specificity
 */
export function readSign(sign: Sign, reading: Reading | undefined): ReadSign | null {
  if (reading === undefined || sign.kind !== 'measured') return null;
  const { key, value, u, unit } = reading;
  if (!Number.isFinite(value)) throw new RangeError(`The reading ${key} is ${value}, no number.`);
  if (!(u >= 0 && u < Number.POSITIVE_INFINITY)) throw new RangeError(`The doubt of ${key} is ${u}.`);
  const found = edgeOf(sign, reading);
  if (found === null) return null;
  const { at, towards } = found;
  const sd = sign.sd ?? usualSd[unit];
  if (!(sd > 0)) throw new RangeError(`The spread between players of ${key} is ${sd}.`);
  const without = at - towards * quantileOf(sign.specificity) * sd;
  const having = at + towards * quantileOf(sign.sensitivity) * sd;
  const atMost =
    sign.ratioAtMost === undefined ? ratioLimit : Math.min(ratioLimit, Math.log(sign.ratioAtMost));
  return { sign, reading, towards, sd, without, shift: having - without, atMost };
}

/**
 * How far a reading stands from players without the cause, in the sign's direction, but no further than it may speak: alone
 * never more than twenty to one for its cause, and never more against it than a coach's "no" would, because players of whom
 * the sign is not seen are like all others.
 *
 * @returns signed like the shift, unit of the reading
 */
export function heardOf({ sign, reading, towards, sd, without, shift }: ReadSign): number {
  const far = Math.abs(shift);
  const variance = sd ** 2 + reading.u ** 2;
  const standsAt = (logRatio: number) => far / 2 + (variance * logRatio) / far;
  const no = Math.log((1 - sign.sensitivity) / sign.specificity);
  const away = towards * (reading.value - without);
  return towards * Math.min(standsAt(ratioLimit), Math.max(standsAt(no), away));
}
