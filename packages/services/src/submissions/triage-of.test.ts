import { describe, expect, it } from 'vitest';
import { triageOf } from './triage-of.ts';

const day = [['09:00', '17:00']];
const academy = {
  zone: 'UTC',
  workingHours: { week: { mon: day, tue: day, wed: day, thu: day, fri: day }, holidays: ['2026-03-11'] },
  promiseHours: 8,
};
// Tuesday 10 March 2026, 15:00; the Wednesday after it is a holiday.
const from = new Date('2026-03-10T15:00:00Z');
const none = { balls: 10, solid: 10, fat: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 };
const plain = {
  submissionId: '01890a5d-ac96-774b-bcce-b302099a8057',
  tally: { ...none, counted: true },
  pain: 'none' as const,
  painAcknowledged: false,
  from,
  academy,
  trialEnd: null,
  firstSwing: false,
  checkIn: false,
};
const fat = { ...plain.tally, solid: 4, fat: 6 };

describe('the place of a swing', () => {
  it('is its answer-by in working hours, holidays left out', () => {
    const place = triageOf(plain);
    expect(place.answerBy).toEqual(new Date('2026-03-12T15:00:00Z'));
    expect(place.priorityKey).toEqual(place.answerBy);
    expect(place.leadFault).toBeNull();
  });

  it('is the same however often it is computed, and ahead by half the promise at most', () => {
    const place = triageOf({ ...plain, tally: fat });
    expect(triageOf({ ...plain, tally: fat })).toEqual(place);
    expect(place.leadFault).toBe('fat');
    expect(place.headStartHours).toBeGreaterThan(0);
    expect(place.headStartHours).toBeLessThanOrEqual(4);
  });

  it('with pain is four working hours away and before every other, until it was seen', () => {
    const pinned = triageOf({ ...plain, pain: 'worse' });
    expect(pinned.answerBy).toEqual(new Date('2026-03-12T11:00:00Z'));
    expect(pinned.priorityKey.getUTCFullYear()).toBeLessThan(1930);
    const seen = triageOf({ ...plain, pain: 'worse', painAcknowledged: true });
    expect(seen.priorityKey).toEqual(seen.answerBy);
  });

  it('comes two working days before a trial ends', () => {
    const place = triageOf({ ...plain, trialEnd: new Date('2026-03-14T00:00:00Z') });
    expect(place.priorityKey).toEqual(new Date('2026-03-12T09:00:00Z'));
    expect(place.reasons.map(({ kind }) => kind)).toContain('trial-ending');
  });
});
