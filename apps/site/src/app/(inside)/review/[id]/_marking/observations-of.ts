import { causes } from '@ballfirst/library/causes';
import { observationByKey } from '@ballfirst/library/observations';
import type { FaultId, Observation } from '@ballfirst/library/types';

/** A row of at most six taps. */
const most = 6;

/** What to look for: the observations that speak for or against the causes of this miss, the heaviest causes first. */
export const observationsOf = (fault: FaultId, view: string): readonly Observation[] => {
  const keys = [...causes]
    .sort((a, b) => (b.brings[fault] ?? 0) - (a.brings[fault] ?? 0))
    .filter((cause) => cause.brings[fault] !== undefined)
    .flatMap((cause) => cause.signs)
    .filter((sign) => sign.kind === 'observed')
    .map((sign) => sign.key);
  return [...new Set(keys)]
    .map(observationByKey)
    .filter((one) => one !== undefined)
    .filter((one) => one.view === 'either' || one.view === view)
    .slice(0, most);
};
