import { describe, expect, it } from 'vitest';
import { checkInTime } from './check-in-time.ts';
import { mayRemindNow, nextLook } from './look-after-time.ts';

const zone = 'Europe/London';
const at = (text: string): Date => new Date(text);

describe('quiet hours of a student', () => {
  it('move a check-in to their end and nothing else', () => {
    const of = { sentAt: at('2026-03-10T12:00:00Z'), days: 7, zone };
    const usual = { localTime: '2026-03-17T08:00', zone, dueAt: at('2026-03-17T08:00:00Z') };
    expect(checkInTime(of)).toEqual(usual);
    expect(checkInTime({ ...of, quiet: { from: '20:00', to: '07:00' } })).toEqual(usual);
    expect(checkInTime({ ...of, quiet: { from: '20:00', to: '10:30' } })).toEqual({
      ...{ localTime: '2026-03-17T10:30', zone, dueAt: at('2026-03-17T10:30:00Z') },
    });
  });

  it('hold over the change of clocks by the wall', () => {
    // Clocks go forward on 29 March 2026 in London: half past ten is 09:30 UTC from then on.
    const of = { sentAt: at('2026-03-26T12:00:00Z'), days: 4, zone, quiet: { from: '22:00', to: '10:30' } };
    expect(checkInTime(of).dueAt).toEqual(at('2026-03-30T09:30:00Z'));
  });

  it('move the daily look, and let no reminder out meanwhile', () => {
    const quiet = { from: '08:00', to: '18:00' };
    expect(nextLook(at('2026-03-10T07:00:00Z'), zone, quiet)).toEqual(at('2026-03-10T18:00:00Z'));
    expect(nextLook(at('2026-03-10T18:00:00Z'), zone, quiet)).toEqual(at('2026-03-11T18:00:00Z'));
    expect(mayRemindNow(at('2026-03-10T12:00:00Z'), zone, quiet)).toBe(false);
    expect(mayRemindNow(at('2026-03-10T18:00:00Z'), zone, quiet)).toBe(true);
    expect(mayRemindNow(at('2026-03-10T12:00:00Z'), zone)).toBe(true);
  });
});
