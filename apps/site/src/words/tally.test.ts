import { expect, it } from 'vitest';
import { tallyInWords, tappedBalls } from './tally.ts';

const tally = {
  balls: 10,
  solid: 3,
  fat: 5,
  thin: 1,
  topped: 0,
  heel: 0,
  toe: 0,
  shank: 0,
  sky: 0,
  counted: true,
};

it('says the commonest outcome first and what was not said', () => {
  expect(tappedBalls(tally)).toBe(9);
  expect(tallyInWords(tally)).toBe('5 fat, 3 solid, 1 thin, 1 not said of 10');
  expect(tallyInWords({ ...tally, fat: 6, counted: false }, 'student')).toBe(
    '6 ground first, 3 solid, 1 thin of 10, from memory',
  );
});
