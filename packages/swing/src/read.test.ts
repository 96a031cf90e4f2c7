import { describe, expect, it } from 'vitest';
import type { Measurement } from './measurement.ts';
import { read } from './read.ts';

const shift: Measurement = {
  key: 'hip-shift-address-top',
  unit: 'mm',
  value: -60,
  u: 20,
  uStatistical: 15,
  proxy: false,
  positions: ['top', 'address'],
};
const band = { low: -40, high: 20, label: 'common practice' } as const;

describe('read', () => {
  it('says how sure we are that the true value lies past each edge', () => {
    const reading = read(shift, band);
    // Standard normal table: P(Z < 1) = 0.8413.
    expect(reading.probabilityBelow).toBeCloseTo(0.8413, 4);
    expect(reading.probabilityAbove).toBeCloseTo(0.00003, 5);
  });

  it('leaves an open edge and a missing band at zero', () => {
    expect(read(shift, { low: null, high: null, label: 'from memory' }).probabilityBelow).toBe(0);
    expect(read(shift, null).probabilityAbove).toBe(0);
  });

  it('is a step where there is no doubt, and refuses crossed edges', () => {
    expect(read({ ...shift, u: 0 }, band).probabilityBelow).toBe(1);
    expect(read({ ...shift, u: 0, value: -30 }, band).probabilityBelow).toBe(0);
    expect(() => read(shift, { low: 5, high: -5, label: 'derived' })).toThrow(RangeError);
  });
});
