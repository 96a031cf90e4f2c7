import type { Truth } from '../golfer/truth.ts';

/** What a coach marks in the demo: the first pass for fat shots and one place more, moments and places by name. */
const marked = {
  address: [
    'ball',
    'lead-ankle',
    'trail-ankle',
    'hip-middle',
    'head-centre',
    'grip-end',
    'lead-thigh-inside',
  ],
  top: ['hip-middle', 'head-centre'],
  'lead-arm-parallel-down': ['hip-middle', 'head-centre'],
  'shaft-parallel-down': ['grip-end'],
  finish: ['hip-middle'],
} as const;

/** The marks of a coach with a steady hand: to the pixel where the golfer really was. */
export const marksOf = (truth: Truth) =>
  Object.entries(marked).flatMap(([moment, places]) => {
    const position = moment as keyof typeof marked;
    return places.map((point) => {
      const [x, y] = truth.points[position][point];
      return { position, point, frame: truth.positions[position], x, y, source: 'coach' as const };
    });
  });
