import type { Cause, FaultId } from '@ballfirst/library/types';
import { type Explained, explainAway } from './explain-away.ts';
import { leak, weightOf } from './weights.ts';

/** A cause with the logarithm of what its signs say together. */
export type WeighedCause = { readonly cause: Cause; readonly logRatio: number };
export type Scored = Explained & { readonly causeId: string; readonly score: number };

const kindOf = (cause: Cause) => (cause.tick === undefined ? 'movement' : 'tick');

/** The best trainability among set-up ticks and among movements: each kind is weighed against its own. */
const bestTrainability = (weighed: readonly WeighedCause[]) => {
  const best = { movement: 0, tick: 0 };
  for (const { cause } of weighed) {
    const kind = kindOf(cause);
    best[kind] = Math.max(best[kind], cause.trainability);
  }
  return best;
};

/**
 * How much is gained by fixing each cause: share * P * (w + what it brings downstream), capped at its share, times its
 * trainability against the best of its kind, so that a set-up tick never outranks a clear movement by a multiplier.
 *
 * @param baseRates - an academy's own, by cause id; else the library's
 * @returns in the order given
 * @throws RangeError when a cause does not bring this fault about
 * @source common practice, no source; the posterior is that of explain-away.ts
 */
export function scoreCauses(
  fault: FaultId,
  weighed: readonly WeighedCause[],
  baseRates: Readonly<Record<string, number>> = {},
): readonly Scored[] {
  const weights = weighed.map(({ cause }) => {
    const weight = cause.brings[fault];
    if (weight === undefined) throw new RangeError(`${cause.id} does not bring about ${fault}.`);
    return weightOf[weight];
  });
  const explained = explainAway(
    weighed.map(({ cause, logRatio }, i) => ({
      baseRate: baseRates[cause.id] ?? cause.baseRate,
      weight: weights[i] ?? 0,
      logRatio,
    })),
    leak,
  );
  const place = new Map(weighed.map(({ cause }, i) => [cause.id, i]));
  const best = bestTrainability(weighed);
  return weighed.map(({ cause }, j) => {
    const { probability, share } = explained[j] ?? { probability: 0, share: 0 };
    let reach = weights[j] ?? 0;
    for (const [id, chance] of Object.entries(cause.leadsTo)) {
      const k = place.get(id);
      if (k !== undefined) reach += chance * (explained[k]?.probability ?? 0) * (weights[k] ?? 0);
    }
    const trainability = cause.trainability / (best[kindOf(cause)] || 1);
    return {
      causeId: cause.id,
      probability,
      share,
      score: Math.min(share, share * probability * reach) * trainability,
    };
  });
}
