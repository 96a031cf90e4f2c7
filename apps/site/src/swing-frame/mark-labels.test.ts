import { expect, it } from 'vitest';
import { markLabels } from './mark-labels.ts';

const picture = { widthPx: 720, heightPx: 1280 };

it('keeps the words within the picture and clear of one another', () => {
  const marks = [
    { point: 'lead-ankle', name: 'left ankle', x: 700, y: 1100 },
    { point: 'trail-ankle', name: 'right ankle', x: 690, y: 1104 },
    { point: 'ball', name: 'ball', x: 400, y: 1275 },
    { point: 'hip-middle', name: 'middle of the hips', x: 30, y: 600 },
  ];
  const labels = markLabels(marks, picture, 24);
  expect(labels.map(({ name, anchor }) => [name, anchor])).toEqual([
    ['middle of the hips', 'start'],
    ['left ankle', 'end'],
    ['right ankle', 'end'],
    ['ball', 'end'],
  ]);
  const [, left, right, ball] = labels;
  expect((right?.labelY ?? 0) - (left?.labelY ?? 0)).toBeGreaterThanOrEqual(24);
  expect(ball?.labelY).toBeLessThanOrEqual(1280);
});

it('has nothing to say without marks', () => {
  expect(markLabels([], picture, 24)).toEqual([]);
});
