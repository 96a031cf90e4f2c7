import { causes } from './causes.ts';
import { observationByKey } from './observations.ts';
import type { CameraView, Cause, Observation, SymptomId } from './types.ts';

/** A row of at most six taps. */
export const tapsAtMost = 6;

/**
 * What to look for: the observations that tell most about the causes of this miss in this view, the heaviest causes first
 * and the surest signs of them before the others.
 */
export const observationsFor = (
  symptom: SymptomId,
  view: CameraView,
  all: readonly Cause[] = causes,
): readonly Observation[] => {
  const worth = new Map<string, number>();
  for (const { brings, signs } of all) {
    const weight = brings[symptom] ?? 0;
    for (const { kind, key, sensitivity, specificity } of signs) {
      if (kind !== 'observed' || weight === 0) continue;
      worth.set(key, (worth.get(key) ?? 0) + weight * (sensitivity + specificity - 1));
    }
  }
  return [...worth]
    .sort(([, a], [, b]) => b - a)
    .map(([key]) => observationByKey(key))
    .filter((one) => one !== undefined)
    .filter((one) => one.view === 'either' || one.view === view)
    .slice(0, tapsAtMost);
};
