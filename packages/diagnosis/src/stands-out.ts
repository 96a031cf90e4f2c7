type Weighed = { readonly probability: number; readonly logRatio: number };

const at = (probability: number, ratio: number) => (ranked: Weighed) =>
  ranked.probability >= probability && ranked.logRatio >= Math.log(ratio);

/**
 * Whether a cause is likely, and not only because it is common or nothing else is left: its own signs speak five to one
 * for it. Set on invented golfers so that nine sound swings of ten are left alone (bench `diagnosis`).
 *
 * @param ranked - its probability, 0..1, and the log likelihood ratio of its signs
 */
export const standsOut = at(0.8, 5);

/** Whether its signs speak for a cause at all: such causes are listed before those that nobody has looked for. */
export const spokenFor = at(0.5, 3);
