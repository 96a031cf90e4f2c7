import { expect, it } from 'vitest';
import { judge, type Measured } from './judge.ts';

const bars = {
  'cold-ms': { of: 'value', max: 100, n: 2 },
  ratio: { min: 0.6 },
} as const;
const verdicts = (...measured: Measured[]) =>
  Object.fromEntries(judge(measured, bars).map((figure) => [figure.what, figure.why ?? figure.ok]));

it('judges value or ratio against the bar', () => {
  expect(
    verdicts(
      { what: 'cold-ms', value: 100, unit: 'ms', n: 2 },
      { what: 'ratio', value: 3, unit: '', ratio: 0.6 },
    ),
  ).toEqual({ 'cold-ms': true, ratio: true });
  expect(
    verdicts(
      { what: 'cold-ms', value: 101, unit: 'ms', n: 2 },
      { what: 'ratio', value: 3, unit: '', ratio: 0.5 },
    ),
  ).toEqual({ 'cold-ms': 'above 100', ratio: 'below 0.6' });
});

it('misses what was not measured, or too seldom', () => {
  expect(verdicts({ what: 'cold-ms', value: 1, unit: 'ms', n: 1 })).toEqual({
    'cold-ms': 'it stands on 1 readings, not 2',
    ratio: 'the bench did not measure it',
  });
  expect(verdicts({ what: 'cold-ms', value: Number.NaN, unit: 'ms' })['cold-ms']).toBe('it was not measured');
});
