import { expect, it } from 'vitest';
import { frameAt, middleOf } from './frame-table.ts';

it('asks for the middle of a frame, also where the rate varies', () => {
  const times = [0, 0.1, 0.3];
  expect(middleOf(times, 0)).toBeCloseTo(0.05);
  expect(middleOf(times, 1)).toBeCloseTo(0.2);
  expect(middleOf(times, 2)).toBeCloseTo(0.4);
  expect(middleOf([0.5], 0)).toBeCloseTo(0.51);
  expect(() => middleOf(times, 3)).toThrow(RangeError);
});

it('finds the frame shown at an instant', () => {
  const times = [0, 0.1, 0.3, 0.301];
  expect([-1, 0, 0.05, 0.0999, 0.1, 0.29, 0.3, 9].map((time) => frameAt(times, time))).toEqual([
    0, 0, 0, 1, 1, 1, 2, 3,
  ]);
});
