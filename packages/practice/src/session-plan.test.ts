import { rungs } from '@ballfirst/library/types';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { retentionCheckDue } from './retention-check.ts';
import { sessionPlan } from './session-plan.ts';

describe('a session', () => {
  it('comes in blocks of five to ten, 90 swings at most and 40 at full speed', () => {
    fc.assert(
      fc.property(fc.constantFrom(...rungs), fc.integer({ min: 1, max: 400 }), (rung, balls) => {
        const { blocks } = sessionPlan(rung, balls);
        const total = blocks.reduce((sum, block) => sum + block, 0);
        expect(total).toBe(Math.min(balls, rung === 'full' || rung === 'transfer' ? 40 : 90));
        for (const block of blocks) {
          expect(block).toBeLessThanOrEqual(10);
          if (total >= 5) expect(block).toBeGreaterThanOrEqual(5);
        }
      }),
      { seed: 91 },
    );
  });
  it('mixes clubs and targets from three-quarter on, and rests after full swings', () => {
    expect(sessionPlan('hip-high', 30)).toMatchObject({ mixed: false, heavy: false, filmOneOf: 3 });
    expect(sessionPlan('three-quarter', 30)).toMatchObject({ mixed: true, heavy: false });
    expect(sessionPlan('full', 30)).toMatchObject({ mixed: true, heavy: true });
    expect(() => sessionPlan('full', 0)).toThrow(RangeError);
  });
});

describe('the retention check', () => {
  const entries = [{ localDate: '2026-03-01' }, { localDate: '2026-03-04' }];
  it('waits two days after the last practice', () => {
    expect(retentionCheckDue(entries, '2026-03-05')).toBe(false);
    expect(retentionCheckDue(entries, '2026-03-06')).toBe(true);
    expect(retentionCheckDue([], '2026-03-06')).toBe(false);
    expect(() => retentionCheckDue(entries, 'soon')).toThrow(RangeError);
  });
});
