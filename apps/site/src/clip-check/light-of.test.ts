import { expect, it } from 'vitest';
import { lightOf } from './light-of.ts';

it('weighs the colours (ITU-R BT.709, item 3.2)', () => {
  expect(lightOf(new Uint8ClampedArray([255, 255, 255, 255, 0, 0, 0, 255]))).toBeCloseTo(0.5, 6);
  expect(lightOf(new Uint8ClampedArray([0, 255, 0, 255]))).toBeCloseTo(0.7152, 6);
  expect(() => lightOf(new Uint8ClampedArray())).toThrow(RangeError);
});
