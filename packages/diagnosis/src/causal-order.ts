import type { CauseGroup } from '@ballfirst/library/types';

/** What comes first when two causes weigh the same: what comes first in the swing. */
const order: readonly CauseGroup[] = ['equipment', 'environment', 'set-up', 'pivot', 'arc', 'face'];

/** Place of a group in the order of causes, 0 first. */
export function causalOrder(group: CauseGroup): number {
  return order.indexOf(group);
}
