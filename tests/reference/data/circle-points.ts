import type { XY } from '@ballfirst/numbers/circle';

export const circlePoints: readonly XY[] = [
  [1, 7],
  [2, 6],
  [5, 8],
  [7, 7],
  [9, 5],
  [3, 7],
];
