import type { Cause, Sign } from '@ballfirst/library/types';
import { clip } from '@ballfirst/numbers/clip';
import { observedSignLogRatio } from '@ballfirst/numbers/observed-sign';
import type { Evidence, Known } from './evidence.ts';
import { jointSigns } from './joint-signs.ts';
import type { Shown } from './shown.ts';
import { ratioLimit } from './weights.ts';

/** What a tapped sign says: null when it was not looked for or cannot be told. */
function tapped(sign: Sign, { answers }: Known): Evidence | null {
  const answer = answers.get(sign.key) ?? null;
  if (sign.kind !== 'observed' || answer === null || answer === 'cannot-tell') return null;
  const logRatio = observedSignLogRatio(answer === 'yes', sign.sensitivity, sign.specificity);
  return { sign, logRatio: clip(logRatio, -ratioLimit, ratioLimit), weight: 1, reading: null, answer };
}

/**
 * What the signs of one cause say, measured and tapped; those that were neither read nor seen say nothing.
 *
 * @param shown - the readings of the swing, as `shownBy` gives them
 * @throws RangeError when a reading or a figure of the library is no number
 * @source joint-signs.ts and observed-sign.ts
 */
export function signEvidence(cause: Cause, shown: Shown, seen: Known): readonly Evidence[] {
  const answers = cause.signs.map((sign) => tapped(sign, seen)).filter((found) => found !== null);
  return [...jointSigns(cause, shown), ...answers];
}
