type Weighed = { readonly probability: number; readonly logRatio: number };

/**
 * Whether a cause is likely, and not only because it is common or nothing else is left: its own signs speak five to one
 * for it. Set on invented golfers so that nine sound swings of ten are left alone (bench `diagnosis`).
 *
 * @param ranked - its probability, 0..1, and the log likelihood ratio of its signs
 */
export const standsOut = ({ probability, logRatio }: Weighed): boolean =>
  probability >= 0.8 && logRatio >= Math.log(5);
