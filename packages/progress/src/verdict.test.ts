import { describe, expect, it } from 'vitest';
import { minimalDetectableChange } from './minimal-detectable-change.ts';
import { verdictOf, verdictWords } from './verdict.ts';

const swayMm = { low: -30, high: 30, detectable: 15 };

describe('verdictOf', () => {
  it.each([
    [-70, -25, 'better'],
    [-70, -60, 'no-clear-change'],
    [-40, -70, 'worse'],
    [-70, 60, 'over-correcting'],
    [-10, 20, 'no-clear-change'],
    [-70, 35, 'better'],
  ] as const)('%s to %s mm is %s', (before, after, verdict) => {
    expect(verdictOf({ ...swayMm, before, after })).toBe(verdict);
    expect(verdictWords(verdict)).not.toBe('');
  });
  it('reads an open edge, and refuses nonsense', () => {
    expect(verdictOf({ before: -50, after: 400, low: 0, high: null, detectable: 20 })).toBe('better');
    expect(() => verdictOf({ ...swayMm, before: Number.NaN, after: 0 })).toThrow(RangeError);
  });
});

describe('minimalDetectableChange', () => {
  it('refuses a negative spread or no swings', () => {
    const ask = { withinSd: 1, betweenSetUpsSd: 1, swingsBefore: 1, swingsAfter: 1 };
    expect(() => minimalDetectableChange({ ...ask, withinSd: -1 })).toThrow(RangeError);
    expect(() => minimalDetectableChange({ ...ask, swingsAfter: 0 })).toThrow(RangeError);
  });
});
