import { causes } from '@ballfirst/library/causes';
import { expect, it } from 'vitest';
import { rank } from './rank.ts';
import { readAll } from './read-all.ts';
import { methodVersion } from './weights.ts';

const reading = (key: string, unit: 'mm' | 'percent', value: number, u: number) => ({
  key,
  unit,
  value,
  u,
  uStatistical: u,
  proxy: false,
  positions: [],
});
const stored = {
  fault: 'fat',
  measurements: [
    reading('hip-shift-address-top', 'mm', -88, 23),
    reading('hip-shift-address-top-percent', 'percent', -23, 6),
    reading('hip-middle-along-ankles', 'percent', 47, 6),
    reading('handle-ahead-of-hip-middle', 'mm', 60, 30),
    reading('hip-shift-top-lead-arm-down', 'mm', 20, 23),
  ],
  observations: [{ key: 'trail-heel-down', answer: 'no' }],
} as const;

/** A diagnosis as it was kept under each version: when the answer changes, the version has to. */
const kept: Readonly<Record<string, readonly (readonly [string, number])[]>> = {
  'noisy-or-2, library-2': [
    ['sway-away', 0.9409],
    ['hips-back-at-address', 0.5987],
    ['hang-back', 0.3919],
    ['thrown-early', 0.4584],
  ],
};

it('a stored diagnosis comes out as it was kept, or by another version', () => {
  const readings = readAll(stored.measurements, { club: '8-iron', swingLength: 'full', view: 'face-on' });
  const ranked = rank({ fault: stored.fault, readings, observations: stored.observations, causes });
  const answer = ranked
    .slice(0, 4)
    .map(({ causeId, probability }) => [causeId, Number(probability.toFixed(4))]);
  expect(answer).toEqual(kept[methodVersion]);
});
