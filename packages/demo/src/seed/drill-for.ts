import { causeById } from '@ballfirst/library/causes';
import { drills } from '@ballfirst/library/drills';
import type { Drill } from '@ballfirst/library/types';

/** The first drill for a cause that the library has for this place. @throws RangeError where there is none */
export const drillFor = (cause: string, place: 'mat' | 'grass'): Drill => {
  for (const id of causeById(cause).drills) {
    const drill = drills.find((it) => it.id === id);
    if (drill?.stations.some((station) => station.place === place)) return drill;
  }
  throw new RangeError(`The library has no drill for ${cause} on ${place}.`);
};
