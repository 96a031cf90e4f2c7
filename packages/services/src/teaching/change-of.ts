import { type Counted, newcombeDifference } from '@ballfirst/numbers/newcombe-difference';

/**
 * Whether a share has changed: only where the 95 % interval of the difference leaves zero out. Null where either span has
 * nobody. The spans do not overlap; a student may stand in both, which makes the interval a little too wide.
 *
 * @throws RangeError on counts that are none
 * @source Newcombe 1998 by way of numbers/newcombe-difference
 */
export const changeOf = (week: Counted, before: Counted): 'more' | 'less' | 'no-clear-change' | null => {
  if (week.n === 0 || before.n === 0) return null;
  const { low, high } = newcombeDifference(week, before);
  if (low > 0) return 'more';
  return high < 0 ? 'less' : 'no-clear-change';
};
