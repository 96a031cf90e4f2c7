import { expect, it } from 'vitest';
import { againstBand, bandInWords, byFinding, type Reading, valueInWords } from './readings.ts';

const reading: Reading = {
  key: 'hip-shift-address-top',
  name: 'Hips, address to top',
  unit: 'mm',
  value: -58.4,
  u: 22.1,
  proxy: false,
  band: { low: -30, high: 40, label: 'common practice' },
  probabilityBelow: 0.9,
  probabilityAbove: 0,
};

it('says a value with its doubt and its band', () => {
  expect(valueInWords(reading)).toBe('−58 ± 22 mm');
  expect(valueInWords({ value: -0.2, u: 3, unit: 'deg' })).toBe('0 ± 3°');
  expect(bandInWords(reading)).toBe('−30 mm to 40 mm (common practice)');
  expect(bandInWords({ ...reading, band: { low: null, high: 5, label: 'derived' } })).toBe(
    '5 mm or less (derived)',
  );
});

it('is never quite sure, and puts findings first', () => {
  expect(againstBand(reading)).toBe('below the band, 90 % sure');
  expect(againstBand({ ...reading, probabilityBelow: 1 })).toBe('below the band, 99 % sure');
  expect(againstBand({ ...reading, probabilityBelow: 0.2 })).toBe('inside the band');
  const inside = { ...reading, probabilityBelow: 0.1 };
  const none = { ...reading, band: null };
  expect(byFinding([none, inside, reading])).toEqual([reading, inside, none]);
});
