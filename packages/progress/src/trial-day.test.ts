import { localMidnightEnd } from '@ballfirst/calendar/local-midnight-end';
import { describe, expect, it } from 'vitest';
import { trialDay, trialDaysLeft } from './trial-day.ts';

const zone = 'America/New_York';
const startedAt = new Date('2026-03-02T04:30Z'); // 1 March, 23:30 local

describe('trialDay', () => {
  it("turns at the student's midnight, over a clock change too", () => {
    expect(trialDay(startedAt, startedAt, zone)).toBe(1);
    expect(trialDay(startedAt, new Date('2026-03-02T05:00Z'), zone)).toBe(2);
    expect(trialDay(startedAt, new Date('2026-03-09T03:59Z'), zone)).toBe(8);
    expect(trialDay(startedAt, new Date('2026-03-01T00:00Z'), zone)).toBe(0);
  });
  it('is on its last day until the trial ends', () => {
    const end = localMidnightEnd({ startedAt, days: 14, zone });
    const justBefore = new Date(end.getTime() - 1);
    expect(trialDay(startedAt, justBefore, zone)).toBe(14);
    expect(trialDaysLeft(startedAt, 14, justBefore, zone)).toBe(1);
    expect(trialDaysLeft(startedAt, 14, end, zone)).toBe(0);
    expect(trialDaysLeft(startedAt, 14, startedAt, zone)).toBe(14);
  });
});
