export type Verdict = 'better' | 'no-clear-change' | 'worse' | 'over-correcting';

export type VerdictQuestion = {
  /** The pre-named measurement before and after, in its unit. */
  readonly before: number;
  readonly after: number;
  /** Its band; an open edge is null. */
  readonly low: number | null;
  readonly high: number | null;
  /** Smallest change that is more than chance, same unit. */
  readonly detectable: number;
};

type Excess = { readonly distance: number; readonly side: 'below' | 'inside' | 'above' };

const excess = (value: number, low: number | null, high: number | null): Excess => {
  if (low !== null && value < low) return { distance: low - value, side: 'below' };
  if (high !== null && value > high) return { distance: value - high, side: 'above' };
  return { distance: 0, side: 'inside' };
};

/**
 * Whether a measurement came closer to its band by more than chance. Leaving the band on the far side by more than
 * chance is over-correcting: a sign of a working drill.
 *
 * @throws RangeError on a number that is none
 * @source common practice: minimal detectable change against the distance from the band
 */
export const verdictOf = ({ before, after, low, high, detectable }: VerdictQuestion): Verdict => {
  if (![before, after, detectable].every(Number.isFinite) || detectable < 0) {
    throw new RangeError('A verdict needs two values and a detectable change.');
  }
  const then = excess(before, low, high);
  const now = excess(after, low, high);
  const crossed = now.side !== 'inside' && then.side !== 'inside' && now.side !== then.side;
  if (crossed && now.distance > detectable) return 'over-correcting';
  if (then.distance - now.distance > detectable) return 'better';
  return now.distance - then.distance > detectable ? 'worse' : 'no-clear-change';
};

const words: Readonly<Record<Verdict, string>> = {
  better: 'Better: the change is larger than chance and the camera can explain.',
  'no-clear-change': 'No clear change yet: what we see could be chance.',
  worse: 'Further away than before, by more than chance.',
  'over-correcting': 'Past the mark on the other side: the drill works, now ease off a little.',
};

/** The verdict in a sentence: what is better first, then how sure. */
export const verdictWords = (verdict: Verdict): string => words[verdict];
