import { expect, it } from 'vitest';
import { dropMark, frameOfMoment, type Mark, mergeMarking, nextPlace, putMark } from './marking.ts';

const mark = (point: Mark['point'], x: number, position: Mark['position'] = 'address'): Mark => ({
  position,
  point,
  frame: 4,
  x,
  y: 10,
  source: 'coach',
});
const pass = [
  { position: 'address', point: 'ball' },
  { position: 'address', point: 'hip-middle' },
  { position: 'top', point: 'hip-middle' },
] as const;
const empty = { marks: [], observations: [] };

it('keeps one mark a place and finds the moment of a mark', () => {
  const twice = putMark(putMark(empty, mark('ball', 1)), mark('ball', 2));
  expect(twice.marks).toEqual([mark('ball', 2)]);
  expect(frameOfMoment(twice.marks, 'address')).toBe(4);
  expect(frameOfMoment(twice.marks, 'top')).toBeNull();
});

it('goes on to the next place without a mark, round to the start, and ends', () => {
  expect(nextPlace(pass, [], 0)).toBe(0);
  expect(nextPlace(pass, [mark('ball', 1)], 0)).toBe(1);
  expect(nextPlace(pass, [mark('hip-middle', 1), mark('hip-middle', 1, 'top')], 2)).toBe(0);
  expect(
    nextPlace(pass, [mark('ball', 1), mark('hip-middle', 1), mark('hip-middle', 1, 'top')], 0),
  ).toBeNull();
});

it('lays own changes over what another coach stored, taken away ones too', () => {
  const own = dropMark(putMark({ marks: [mark('grip-end', 1)], observations: [] }, mark('ball', 5)), {
    position: 'address',
    point: 'grip-end',
  });
  const touched = { marks: new Set(['address/ball', 'address/grip-end']), observations: new Set<string>() };
  const stored = {
    marks: [mark('ball', 1), mark('grip-end', 1), mark('head-centre', 7)],
    observations: [{ key: 'falls-back', answer: 'yes' as const }],
  };
  expect(mergeMarking(stored, own, touched)).toEqual({
    marks: [mark('head-centre', 7), mark('ball', 5)],
    observations: stored.observations,
  });
});
