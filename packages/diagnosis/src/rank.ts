import type { Cause, SymptomId } from '@ballfirst/library/types';
import type { Reading } from '@ballfirst/swing/measurement';
import { causalOrder } from './causal-order.ts';
import { combineSigns } from './combine-signs.ts';
import { type Evidence, known, type ObservationAnswer } from './evidence.ts';
import { type Factor, factorOf } from './factor.ts';
import { scoreCauses } from './score-causes.ts';
import { signEvidence } from './sign-evidence.ts';
import { spokenFor } from './stands-out.ts';

export type RankedCause = {
  readonly causeId: string;
  /** P(cause | fault, signs), 0..1. */
  readonly probability: number;
  /** Share of the fault that would go without it, 0..1. */
  readonly share: number;
  readonly score: number;
  /** Log likelihood ratio of its signs together; 0 when none was read. */
  readonly logRatio: number;
  /** What speaks for and against it, the weightiest first. */
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
 * The causes that may bring a fault about, the one to fix first at the head: those whose signs speak for them, then the others, each
 * by what is gained by fixing it.
 *
 * @param input - readings against their bands, observations, the library's causes
 * @throws RangeError when a sign or base rate of the library is out of range
 * @source explain-away.ts and score-causes.ts
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
  const weighed = causes
    .filter((cause) => cause.brings[fault] !== undefined)
    .map((cause) => {
      const evidence = cause.signs
        .map((sign) => signEvidence(sign, seen))
        .filter((found): found is Evidence => found !== null);
      return { cause, evidence, logRatio: combineSigns(evidence) };
    });
  const scored = scoreCauses(fault, weighed, baseRates);
  return weighed
    .map(({ cause, evidence, logRatio }, i) => {
      const { probability, share, score } = scored[i] ?? { probability: 0, share: 0, score: 0 };
      const factors = evidence.map(factorOf).sort((a, b) => Math.abs(b.logRatio) - Math.abs(a.logRatio));
      return {
        group: cause.group,
        ranked: { causeId: cause.id, probability, share, score, logRatio, factors },
      };
    })
    .sort((a, b) => {
      const spoken = Number(spokenFor(b.ranked)) - Number(spokenFor(a.ranked));
      if (spoken !== 0) return spoken;
      const apart = b.ranked.score - a.ranked.score;
      const level = Math.abs(apart) <= tie * Math.max(a.ranked.score, b.ranked.score);
      return level ? causalOrder(a.group) - causalOrder(b.group) : apart;
    })
    .map(({ ranked }) => ranked);
}
