import type { Cause } from '@ballfirst/library/types';
import type { Mark } from '../_marking/marking.ts';

type Position = Mark['position'];

/** The moment a measurement speaks of, by its name; address where it names no other. */
const momentOf = (key: string): Position => {
  if (key.includes('shaft-parallel-down')) return 'shaft-parallel-down';
  if (key.includes('lead-arm-down')) return 'lead-arm-parallel-down';
  if (key.includes('impact')) return 'impact';
  if (key.includes('finish')) return 'finish';
  return key.includes('top') ? 'top' : 'address';
};

/** The marked moments at which a cause shows, the best first; address when none of its moments is marked. */
export const momentsOfCause = (cause: Cause | null, marked: readonly Position[]): readonly Position[] => {
  const moments = (cause?.signs ?? [])
    .filter((sign) => sign.kind === 'measured')
    .map((sign) => momentOf(sign.key))
    .filter((moment) => marked.includes(moment));
  return moments.length === 0 ? ['address'] : [...new Set(moments)];
};
