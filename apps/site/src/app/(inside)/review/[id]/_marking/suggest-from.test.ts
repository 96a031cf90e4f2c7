import { expect, it } from 'vitest';
import type { Mark } from './marking.ts';
import { frameFrom, type Marked, placing, suggestFrom } from './suggest-from.ts';

const mark = (
  position: Mark['position'],
  point: Mark['point'],
  frame: number,
  x: number,
  y: number,
): Mark => ({
  ...{ position, point, frame, x, y },
  source: 'coach',
});
const times = (fps: number, frames: number) => Array.from({ length: frames }, (_, frame) => frame / fps);
const last: Marked = {
  size: { widthPx: 720, heightPx: 1280 },
  timesS: times(100, 300),
  heardAt: null,
  marks: [
    mark('address', 'ball', 20, 360, 1000),
    mark('address', 'lead-ankle', 20, 460, 960),
    mark('address', 'hip-middle', 20, 400, 640),
    mark('top', 'hip-middle', 110, 380, 630),
    mark('impact', 'head-centre', 140, 360, 400),
  ],
};
const here = (marks: readonly Mark[], heardAt: number | null = null): Marked => ({
  size: { widthPx: 1080, heightPx: 1920 },
  timesS: times(200, 600),
  heardAt,
  marks,
});
const places = [
  { position: 'address', point: 'hip-middle' },
  { position: 'top', point: 'hip-middle' },
] as const;

it('takes the places as the points of address in both lie', () => {
  // Half as large again, and 30 px to the right, 10 px down.
  const now = here([mark('address', 'ball', 50, 570, 1510), mark('address', 'lead-ankle', 50, 720, 1450)]);
  const put = placing(now, last);
  expect(put?.({ x: 360, y: 1000 })).toEqual({ x: 570, y: 1510 });
  expect(put?.({ x: 460, y: 960 }).x).toBeCloseTo(720, 6);
  expect(put?.({ x: 400, y: 640 })).toEqual({ x: 630, y: 970 });
});

it('ties the moments by what both have: 0.9 s after address here as there', () => {
  const now = here([mark('address', 'ball', 50, 570, 1510)]);
  expect(frameFrom(now, last, 'top')).toBe(50 + 180);
  expect(frameFrom(now, last, 'finish')).toBeNull();
  expect(frameFrom(here([]), last, 'top')).toBeNull();
});

it('suggests what is not marked yet, inside the picture, hollow', () => {
  const now = here([mark('address', 'ball', 50, 570, 1510)]);
  const found = suggestFrom(now, last, places);
  expect(found.map(({ position, frame, source }) => [position, frame, source])).toEqual([
    ['address', 50, 'suggested'],
    ['top', 230, 'suggested'],
  ]);
  expect(
    suggestFrom(here([...now.marks, mark('address', 'hip-middle', 50, 630, 970)]), last, places),
  ).toHaveLength(1);
  expect(suggestFrom(here([mark('address', 'ball', 50, 5, 1510)]), last, places)).toEqual([
    expect.objectContaining({ position: 'address', x: 65 }),
    expect.objectContaining({ position: 'top', x: 35 }),
  ]);
  expect(suggestFrom(here([mark('address', 'ball', 50, 570, 20)]), last, places)).toEqual([]);
});

it('says nothing without a last swing, or when the phone stood much nearer or farther', () => {
  expect(suggestFrom(here([mark('address', 'ball', 50, 570, 1510)]), null, places)).toEqual([]);
  const near = here([mark('address', 'ball', 50, 200, 1800), mark('address', 'lead-ankle', 50, 900, 1500)]);
  expect(placing(near, last)).toBeNull();
});
