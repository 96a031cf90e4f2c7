import type { Cause, SymptomId } from '@ballfirst/library/types';
import { type Explained, explainAway } from './explain-away.ts';
import { leak, weightOf } from './weights.ts';

/** A cause with the logarithm of what its signs say together. */
export type WeighedCause = { readonly cause: Cause; readonly logRatio: number };
export type Scored = Explained & { readonly causeId: string; readonly score: number };

/** What stands before the swing begins: it is set right with a tick, whatever is trained. */
const beforeTheSwing: ReadonlySet<Cause['group']> = new Set(['equipment', 'environment', 'set-up']);

/** The best trainability among the movements: each is weighed against it. */
const bestMovement = (weighed: readonly WeighedCause[]): number =>
  weighed
    .filter(({ cause }) => !beforeTheSwing.has(cause.group))
    .reduce((best, { cause }) => Math.max(best, cause.trainability), 0) || 1;

/**
 * How much is gained by fixing each cause: share * P * w, for a movement also by what it brings downstream, times its
 * trainability against the best movement, and never more than its share. Set-up takes no multiplier: measured, it stands
 * before a movement only when its own signs say more.
 *
 * @param baseRates - an academy's own, by cause id; else the library's
 * @returns in the order given
 * @throws RangeError when a cause does not bring this fault about
 * @source common practice, no source; the posterior is that of explain-away.ts
 */
export function scoreCauses(
  fault: SymptomId,
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
  const best = bestMovement(weighed);
  const reachOf = (cause: Cause, weight: number): number => {
    let reach = weight;
    for (const [id, chance] of Object.entries(cause.leadsTo)) {
      const k = place.get(id);
      if (k !== undefined) reach += chance * (explained[k]?.probability ?? 0) * (weights[k] ?? 0);
    }
    return (reach * cause.trainability) / best;
  };
  return weighed.map(({ cause }, j) => {
    const { probability, share } = explained[j] ?? { probability: 0, share: 0 };
    const weight = weights[j] ?? 0;
    const worth = beforeTheSwing.has(cause.group) ? weight : reachOf(cause, weight);
    return { causeId: cause.id, probability, share, score: Math.min(share, share * probability * worth) };
  });
}
