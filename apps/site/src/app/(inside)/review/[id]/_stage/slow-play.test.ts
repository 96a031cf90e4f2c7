import { expect, it } from 'vitest';
import { frameDue, stretchAround } from './slow-play.ts';

const times = Array.from({ length: 120 }, (_, frame) => frame / 120);

it('plays an eighth as fast and stops at the end', () => {
  const begun = { frame: 12, atMs: 1000 };
  expect(frameDue(times, begun, 1000, null)).toBe(12);
  expect(frameDue(times, begun, 1800, null)).toBe(24);
  expect(frameDue(times, begun, 60_000, null)).toBe(119);
});

it('loops from before impact to after it', () => {
  const stretch = stretchAround(times, 60);
  expect(stretch).toEqual({ from: 36, to: 72 });
  const begun = { frame: 36, atMs: 0 };
  expect(frameDue(times, begun, 800, stretch)).toBe(48);
  expect(frameDue(times, begun, 2400 + 800, stretch)).toBe(48);
  expect(stretchAround(times, 0)).toEqual({ from: 0, to: 12 });
});
