export type PossibleCause = {
  /** Chance of the cause without regard to the fault, strictly between 0 and 1. */
  readonly baseRate: number;
  /** Chance that the cause, when present, brings the fault about, 0..1. */
  readonly weight: number;
  /** Log likelihood ratio of its signs. */
  readonly logRatio: number;
};

export type Explained = {
  /** P(cause | fault, signs). */
  readonly probability: number;
  /** Share of P(fault | signs) that would be lost without this cause. */
  readonly share: number;
};

/**
 * Posterior of several causes of one fault that explain each other away.
 *
 * Over all 2^K sets c: P(c | fault, signs) ~ prod pi^c (1 - pi)^(1-c) LR^c * noisyOr(leak, w of c). The sum factorises,
 * because signs are independent given the causes, so no set is left out at any K; the tests hold it against the full sum.
 *
 * @param leak - chance of the fault without any listed cause, 0..1
 * @returns one answer for each cause, in the same order
 * @throws RangeError when a base rate or weight is out of range, or the fault is impossible
 * @source noisy-OR network (Pearl 1988, section 4.3.2), summed exactly
 * @example explainAway([{ baseRate: 0.3, weight: 0.6, logRatio: 0 }], 0.05)
 */
export function explainAway(causes: readonly PossibleCause[], leak: number): readonly Explained[] {
  const present = causes.map(({ baseRate, logRatio }) => {
    if (!(baseRate > 0 && baseRate < 1)) throw new RangeError('A base rate lies strictly between 0 and 1.');
    return 1 / (1 + ((1 - baseRate) / baseRate) * Math.exp(-logRatio));
  });
  const missed = causes.map(({ weight }, i) => {
    if (!(weight >= 0 && weight <= 1)) throw new RangeError('A weight lies between 0 and 1.');
    return 1 - (present[i] ?? 0) * weight;
  });
  const fault = 1 - (1 - leak) * missed.reduce((product, one) => product * one, 1);
  if (!(leak >= 0 && leak <= 1 && fault > 0))
    throw new RangeError('No cause and no leak: the fault cannot happen.');
  return causes.map(({ weight }, j) => {
    let missedByOthers = 1 - leak;
    for (let i = 0; i < missed.length; i += 1) if (i !== j) missedByOthers *= missed[i] ?? 1;
    return {
      probability: ((present[j] ?? 0) * (1 - missedByOthers * (1 - weight))) / fault,
      share: Math.max(0, 1 - (1 - missedByOthers) / fault),
    };
  });
}
