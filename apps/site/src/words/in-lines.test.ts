import { expect, it } from 'vitest';
import { inLines } from './in-lines.ts';

it('breaks words into short lines, a longer word staying whole', () => {
  expect(inLines('towel, flat, 15 cm behind the ball', 15)).toEqual([
    'towel, flat, 15',
    'cm behind the',
    'ball',
  ]);
  expect(inLines('grandmother', 4)).toEqual(['grandmother']);
});
