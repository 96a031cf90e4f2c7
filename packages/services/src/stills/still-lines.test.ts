import { expect, it } from 'vitest';
import { describeStill } from './describe-still.ts';
import { stillLines } from './still-lines.ts';

const mark = (position: string, point: string, x: number, y: number) => ({ position, point, x, y });
const marks = [
  mark('address', 'ball', 400, 1200),
  mark('address', 'head-centre', 380, 300),
  mark('address', 'hip-middle', 390, 700),
  mark('top', 'hip-middle', 360, 705),
  mark('top', 'grip-end', 300, 400),
  mark('top', 'clubhead', 500, 200),
];

it('rules the ball line of set-up, the way of the hips and the shaft', () => {
  expect(stillLines(marks, 'top', 1280)).toEqual([
    { x1: 400, y1: 1200, x2: 400, y2: 300 - 76.8, name: 'ball line' },
    { x1: 390, y1: 700, x2: 360, y2: 705, name: 'way of the hips' },
    { x1: 500, y1: 200, x2: 300, y2: 400, name: null },
  ]);
});

it('has no way of the hips at set-up, and nothing without marks', () => {
  expect(stillLines(marks, 'address', 1280).map(({ name }) => name)).toEqual(['ball line']);
  expect(stillLines([], 'top', 1280)).toEqual([]);
});

it('is told in words', () => {
  expect(describeStill('At the top', ['left ankle', 'ball'], ['ball line', null, 'way of the hips'])).toBe(
    'At the top. Marked: left ankle, ball. Drawn in: ball line, way of the hips.',
  );
  expect(describeStill(' ', [], [])).toBe('A moment of your swing.');
});
