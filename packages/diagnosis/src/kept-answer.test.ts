import { causes } from '@ballfirst/library/causes';
import { plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { expect, it } from 'vitest';
import { evidenceOf, withoutOrder } from './evidence-of.ts';
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
  'pinhole-2, noisy-or-3, library-2': [
    ['sway-away', 0.9794],
    ['hips-back-at-address', 0.5981],
    ['hang-back', 0.3914],
    ['thrown-early', 0.4579],
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

/** The same with an academy's own rates, as they are kept among the inputs of a diagnosis. */
const ownRates = { 'sway-away': 0.2, 'hang-back': 0.55, 'thrown-early': 0.15 };
const keptWithRates: Readonly<Record<string, readonly (readonly [string, number])[]>> = {
  'pinhole-2, noisy-or-3, library-2': [
    ['sway-away', 0.9363],
    ['hips-back-at-address', 0.6002],
    ['hang-back', 0.4926],
    ['handle-back', 0.3751],
  ],
};

it('a diagnosis that was stored with an academy’s own rates comes out as it was kept, or by another version', () => {
  const readings = readAll(stored.measurements, { club: '8-iron', swingLength: 'full', view: 'face-on' });
  const asked = { fault: stored.fault, readings, observations: stored.observations, causes };
  const answer = rank({ ...asked, baseRates: JSON.parse(JSON.stringify(ownRates)) })
    .slice(0, 4)
    .map(({ causeId, probability }) => [causeId, Number(probability.toFixed(4))]);
  expect(answer).toEqual(keptWithRates[methodVersion]);
  // A cause that nothing was learned of has the library's rate: the map need not hold it.
  const spelled = Object.fromEntries(causes.map(({ id, baseRate }) => [id, baseRate]));
  expect(rank({ ...asked, baseRates: { ...spelled, ...ownRates } })).toEqual(
    rank({ ...asked, baseRates: ownRates }),
  );
});

/** The same from marks: what was measured, with its doubt, and what came first. */
const keptFromMarks: Readonly<Record<string, readonly unknown[]>> = {
  'pinhole-2, noisy-or-3, library-2': [
    ['hip-shift-address-top', -94.99, 41.2],
    ['sway-away', 0.9377],
  ],
};

it('marks that were stored are measured as they were, or by another version', () => {
  const setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
  const marks = plantedMarks({ hipToTop: -95, headToTop: -85 });
  const evidence = () => evidenceOf('fat', { marks, observations: [], picture: plantedPicture, setting });
  const { readings, causes: ranked } = evidence();
  const shift = readings.find(({ key }) => key === 'hip-shift-address-top');
  const [first] = ranked;
  const answer = [
    [shift?.key, Number(shift?.value.toFixed(2)), Number(shift?.u.toFixed(2))],
    [first?.causeId, Number(first?.probability.toFixed(4))],
  ];
  expect(answer).toEqual(keptFromMarks[methodVersion]);
  expect(evidence()).toEqual(evidence());
});

it('evidence whose order is held back says what was measured and nothing of the causes', () => {
  const setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
  const marks = plantedMarks({ hipToTop: -95, headToTop: -85 });
  const whole = evidenceOf('fat', { marks, observations: [], picture: plantedPicture, setting });
  const { causes: ranked, first, next, ...rest } = withoutOrder(whole);
  expect([ranked, first, next]).toEqual([[], null, null]);
  expect({ ...whole, ...rest }).toEqual(whole);
  for (const { name } of causes) expect(JSON.stringify(rest)).not.toContain(name);
});
