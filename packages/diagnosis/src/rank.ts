import type { Cause, SymptomId } from '@ballfirst/library/types';
import type { Reading } from '@ballfirst/swing/measurement';
import { causalOrder } from './causal-order.ts';
import { countSigns } from './combine-signs.ts';
import { known, type ObservationAnswer } from './evidence.ts';
import { type Factor, factorsOf } from './factor.ts';
import { loudness } from './loudness.ts';
import { scoreCauses } from './score-causes.ts';
import { shownBy } from './shown.ts';
import { signEvidence } from './sign-evidence.ts';

export type RankedCause = {
  readonly causeId: string;
  /** P(cause | fault, signs), 0..1. */
  readonly probability: number;
  /** Share of the fault that would go without it, 0..1. */
  readonly share: number;
  readonly score: number;
  /** Log likelihood ratio of its signs together; 0 when none was read. */
  readonly logRatio: number;
  /** What speaks for and against it, the weightiest first; their log ratios add up to `logRatio`. */
  readonly factors: readonly Factor[];
};

export type RankInput = {
  readonly fault: SymptomId;
  readonly readings: readonly Reading[];
  readonly observations: readonly ObservationAnswer[];
  readonly causes: readonly Cause[];
  /** An academy's own base rates by cause id. */
  readonly baseRates?: Readonly<Record<string, number>>;
};

/** Scores closer than this, relative to the larger, are a tie that the order of the swing decides. */
const tie = 1e-6;

/**
 * The causes that may bring a fault about, the one to fix first at the head: by how loudly their signs speak for them, in
 * steps of twice as likely; those that speak as loudly by what is gained by fixing them.
 *
 * @param input - readings against their bands, observations, the library's causes
 * @throws RangeError when a reading is no number, or a sign or base rate of the library is out of range
 * @source joint-signs.ts, explain-away.ts and score-causes.ts
 * @example rank({ fault: 'fat', readings, observations: [], causes })[0]?.causeId
 */
export function rank({
  fault,
  readings,
  observations,
  causes,
  baseRates,
}: RankInput): readonly RankedCause[] {
  const seen = known(readings, observations);
  const shown = shownBy(causes, seen);
  const weighed = causes
    .filter((cause) => cause.brings[fault] !== undefined)
    .map((cause) => {
      const evidence = countSigns(signEvidence(cause, shown, seen));
      return { cause, evidence, logRatio: evidence.reduce((sum, one) => sum + one.logRatio, 0) };
    });
  const scored = scoreCauses(fault, weighed, baseRates);
  return weighed
    .map(({ cause, evidence, logRatio }, i) => {
      const { probability, share, score } = scored[i] ?? { probability: 0, share: 0, score: 0 };
      const factors = factorsOf(evidence);
      return {
        group: cause.group,
        ranked: { causeId: cause.id, probability, share, score, logRatio, factors },
      };
    })
    .sort((a, b) => {
      const louder = loudness(b.ranked.logRatio) - loudness(a.ranked.logRatio);
      if (louder !== 0) return louder;
      const apart = b.ranked.score - a.ranked.score;
      const level = Math.abs(apart) <= tie * Math.max(a.ranked.score, b.ranked.score);
      return level ? causalOrder(a.group) - causalOrder(b.group) : apart;
    })
    .map(({ ranked }) => ranked);
}
