import { expect, it } from 'vitest';
import { partOfStep } from './part-of-step.ts';

const size = { widthPx: 720, heightPx: 1280 };
const step = (times: number, x: number, y: number) => ({ atMs: 0, frame: 0, times, x, y, point: null });

it('shows the whole picture, or a part of it that stays inside', () => {
  expect(partOfStep(size, null)).toEqual({ x: 0, y: 0, width: 720, height: 1280 });
  expect(partOfStep(size, step(1, 99, 99))).toEqual({ x: 0, y: 0, width: 720, height: 1280 });
  expect(partOfStep(size, step(4, 360, 640))).toEqual({ x: 270, y: 480, width: 180, height: 320 });
  expect(partOfStep(size, step(8, 720, 0))).toEqual({ x: 630, y: 0, width: 90, height: 160 });
});
