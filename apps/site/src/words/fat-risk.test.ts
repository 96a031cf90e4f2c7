import { fatRiskOfSet } from '@ballfirst/swing/arc/fat-risk-of-set';
import { expect, it } from 'vitest';
import {
  doubtInWords,
  type FatRiskTold,
  figuresOf,
  groundFirst,
  lengthInWords,
  waysInWords,
} from './fat-risk.ts';

const arc = { lowPointMm: 65.5, uOwnMm: 13, uTiltMm: 13, radiusMm: 1300, uRadiusMm: 90, perRadius: 0 };
const of = (fat: number): FatRiskTold => {
  const swings = [{ setUp: 'a', arc }];
  const risk = fatRiskOfSet({ club: '8-iron', lie: 'mat', swings, lineTestMm: null, balls: { fat, of: 10 } });
  if (risk.kind === 'refused') throw new Error(risk.words);
  return risk;
};

it('says first how often the ground is met behind the ball, in words and in the units of the reader', () => {
  expect(groundFirst(of(7), 'metric')).toBe(
    'About 7 in 10 of these swings meet the ground more than 3 cm behind the ball.',
  );
  // 30 mm / 25.4 = 1.18 in.
  expect(groundFirst(of(7), 'imperial')).toContain('more than 1.2 in behind the ball');
  expect(groundFirst(of(0), 'metric')).toMatch(/^Fewer than 1 in 10 of these swings meets/);
  expect(groundFirst(of(10), 'metric')).toMatch(/^Nearly all of these swings meet/);
});

it('says how far forward, or how much higher and at which price, with its doubt', () => {
  const risk = of(7);
  const { forward, higher } = risk;
  const words = waysInWords(risk, 'metric');
  expect(words).toContain(`Low point ${Math.round(forward.byMm)} mm further forward brings it to 1 in 10`);
  expect(words).toContain(`An arc ${Math.round(higher.byMm)} mm higher does it too, at a price`);
  expect(words).toContain('never on the ground');
  expect(words).not.toMatch(/will|always|\bcure/);
  expect(waysInWords(risk, 'imperial')).toContain(`${(forward.byMm / 25.4).toFixed(1)} in further forward`);
  expect(doubtInWords(risk, 'metric')).toMatch(
    /^Two chances in three: \d to \d in 10, forward \d+ to \d+ mm\.$/,
  );
  const far = { ...risk, fat: 0.98, fatLow: 0.97, fatHigh: 0.99 };
  expect(doubtInWords(far, 'metric')).toMatch(/^Two chances in three: nearly all, forward/);
  expect(waysInWords(of(0), 'metric')).toBe('That is 1 in 10 or fewer: the low point lies well.');
});

it('folds the figures, none of them without its unit or sure to a millimetre', () => {
  const figures = figuresOf(of(7), 'metric').map(([, figure]) => figure);
  expect(figures).toHaveLength(7);
  for (const figure of figures) expect(figure).toMatch(/(mm|%|%\))$/);
  expect(figures[0]).toMatch(/^6\d ± \d\d mm$/);
  expect(figuresOf(of(7), 'imperial')[0]?.[1]).toMatch(/^2\.\d ± \d\.\d in$/);
  expect(lengthInWords(0.2, 'metric')).toBe('1 mm');
  expect(lengthInWords(0.2, 'imperial')).toBe('0.1 in');
});
