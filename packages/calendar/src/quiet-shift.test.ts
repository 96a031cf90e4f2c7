import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type QuietHours, quietShift } from './quiet-shift.ts';

const night: QuietHours = { zone: 'Europe/London', from: '21:00', to: '08:00' };
const siesta: QuietHours = { zone: 'Europe/Madrid', from: '13:00', to: '15:30' };
const shifted = (iso: string, quiet: QuietHours): string => quietShift(new Date(iso), quiet).toISOString();

describe('quietShift', () => {
  it('waits for the morning, before and after midnight', () => {
    expect(shifted('2026-01-05T23:00Z', night)).toBe('2026-01-06T08:00:00.000Z');
    expect(shifted('2026-01-06T03:00Z', night)).toBe('2026-01-06T08:00:00.000Z');
    expect(shifted('2026-01-05T21:00Z', night)).toBe('2026-01-06T08:00:00.000Z');
  });
  it('leaves the day alone, its first minute included', () => {
    expect(shifted('2026-01-06T08:00Z', night)).toBe('2026-01-06T08:00:00.000Z');
    expect(shifted('2026-01-06T20:59:59.999Z', night)).toBe('2026-01-06T20:59:59.999Z');
  });
  it('knows quiet hours inside one day, and none', () => {
    expect(shifted('2026-07-01T12:00Z', siesta)).toBe('2026-07-01T13:30:00.000Z');
    expect(shifted('2026-07-01T12:00Z', { ...siesta, from: '00:00', to: '00:00' })).toBe(
      '2026-07-01T12:00:00.000Z',
    );
  });
  it('keeps the wall hour over a clock change', () => {
    expect(shifted('2026-03-28T22:00Z', night)).toBe('2026-03-29T07:00:00.000Z');
  });
  it('goes forward in the repeated hour of autumn', () => {
    const until: QuietHours = { zone: 'America/New_York', from: '00:00', to: '01:30' };
    expect(shifted('2026-11-01T06:15Z', until)).toBe('2026-11-01T06:30:00.000Z');
  });
  it('never moves back, and once moved stays', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('2025-01-01'), max: new Date('2027-01-01'), noInvalidDate: true }),
        fc.constantFrom(night, siesta),
        (instant, quiet) => {
          const once = quietShift(instant, quiet);
          expect(once.getTime()).toBeGreaterThanOrEqual(instant.getTime());
          expect(quietShift(once, quiet)).toEqual(once);
        },
      ),
      { numRuns: 200, seed: 3 },
    );
  });
});
