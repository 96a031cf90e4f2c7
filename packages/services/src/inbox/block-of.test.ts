import { describe, expect, it } from 'vitest';
import { blockOf, dayEdges } from './block-of.ts';

// A Tuesday, nine in the morning in Stockholm.
const now = new Date('2026-03-10T08:00:00Z');
const due = (answerBy: string, told = {}, zone = 'Europe/Stockholm') =>
  blockOf({ pain: 'none', painSeenAt: null, answerBy: new Date(answerBy), ...told }, dayEdges(now, zone));

describe('the block of a swing', () => {
  it('goes by the calendar of the academy', () => {
    expect(due('2026-03-10T08:00:00Z')).toBe('late');
    expect(due('2026-03-10T11:00:00Z')).toBe('before-noon');
    expect(due('2026-03-10T11:00:01Z')).toBe('today');
    expect(due('2026-03-10T22:59:59Z')).toBe('today');
    expect(due('2026-03-10T23:00:00Z')).toBe('tomorrow');
    expect(due('2026-03-11T22:59:59Z')).toBe('tomorrow');
    expect(due('2026-03-11T23:00:00Z')).toBe('later');
  });

  it('may be another in another zone at the same instant', () => {
    expect(due('2026-03-10T22:59:59Z', {}, 'Pacific/Auckland')).toBe('tomorrow');
  });

  it('goes by the day of 23 hours too', () => {
    // In Stockholm the clocks go forward on 29 March 2026 (IANA time zone database): that day ends at 22:00 UTC.
    const edges = dayEdges(new Date('2026-03-28T23:30:00Z'), 'Europe/Stockholm');
    expect(edges.tomorrow.toISOString()).toBe('2026-03-29T22:00:00.000Z');
    expect(edges.noon.toISOString()).toBe('2026-03-29T10:00:00.000Z');
  });

  it('is that of pain until a coach has read it', () => {
    expect(due('2026-03-10T07:00:00Z', { pain: 'new' })).toBe('pain');
    expect(due('2026-03-10T07:00:00Z', { pain: 'worse', painSeenAt: now })).toBe('late');
  });
});
