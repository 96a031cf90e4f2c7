import { expect, it } from 'vitest';
import type { Mark } from './marking.ts';
import { halfWay, ownDoubt } from './own-doubt.ts';

const size = { widthPx: 1080, heightPx: 1920 };
const mark = (point: Mark['point'], x: number, y: number): Mark => ({
  ...{ position: 'address', point, frame: 3, x, y },
  source: 'coach',
});
const first = [mark('ball', 100, 100), mark('head-centre', 200, 200), mark('hip-middle', 300, 300)];
const second = [mark('ball', 102, 100), mark('head-centre', 200, 206), mark('hip-middle', 300, 296)];

it('is half the root mean square of how far apart the two lie', () => {
  // Worked by hand: sqrt((4 + 36 + 16) / 12).
  const found = ownDoubt(first, second, size);
  expect(found?.px).toBeCloseTo(Math.sqrt(56 / 12), 9);
  // Most clicks are taken for 1, 4 and 6 pixels, and one in ten for three times as far: sqrt(53 / 3) sqrt(1.8).
  expect(found?.assumedPx).toBeCloseTo(Math.sqrt((53 / 3) * 1.8), 9);
  expect([found?.marks, found?.widest.point, found?.widestPx]).toEqual([3, 'head-centre', 6]);
});

it('says nothing of fewer than three pairs', () => {
  expect(ownDoubt(first, second.slice(0, 2), size)).toBeNull();
  expect(ownDoubt([], second, size)).toBeNull();
});

it('finds the way half between', () => {
  expect(halfWay(first, [mark('ball', 102, 101), mark('clubhead', 1, 1)])).toEqual([
    mark('ball', 101, 100.5),
  ]);
});
