import { describe, expect, it } from 'vitest';
import { blockOf } from './block-of.ts';

// A Tuesday, nine in the morning in Stockholm.
const now = new Date('2026-03-10T08:00:00Z');
const plain = { pain: 'none', painSeenAt: null, now, zone: 'Europe/Stockholm' };
const due = (answerBy: string, given: Partial<Parameters<typeof blockOf>[0]> = {}) =>
  blockOf({ ...plain, answerBy: new Date(answerBy), ...given });

describe('the block of a swing', () => {
  it('goes by the calendar of the academy', () => {
    expect(due('2026-03-10T08:00:00Z')).toBe('late');
    expect(due('2026-03-10T11:00:00Z')).toBe('before-noon');
    expect(due('2026-03-10T11:00:01Z')).toBe('today');
    expect(due('2026-03-10T22:59:59Z')).toBe('today');
    expect(due('2026-03-10T23:00:00Z')).toBe('tomorrow');
    expect(due('2026-03-11T23:00:00Z')).toBe('later');
  });

  it('may be another in another zone at the same instant', () => {
    expect(due('2026-03-10T22:59:59Z', { zone: 'Pacific/Auckland' })).toBe('tomorrow');
  });

  it('is that of pain until a coach has read it', () => {
    expect(due('2026-03-10T07:00:00Z', { pain: 'new' })).toBe('pain');
    expect(due('2026-03-10T07:00:00Z', { pain: 'worse', painSeenAt: now })).toBe('late');
  });
});
