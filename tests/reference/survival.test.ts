import { aalenJohansen } from '@ballfirst/numbers/aalen-johansen';
import type { Followed } from '@ballfirst/numbers/event-table';
import { kaplanMeier, medianSurvival } from '@ballfirst/numbers/kaplan-meier';
import { logRank } from '@ballfirst/numbers/log-rank';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placebo, treated } from './data/freireich.ts';

describe('Kaplan-Meier', () => {
  // Source: Freireich et al. 1963 with the textbook estimates; standard errors by Greenwood.
  it('6-MP', () => {
    const table = kaplanMeier(treated).map(({ time, atRisk, events, survival, se }) => [
      time,
      atRisk,
      events,
      Number(survival.toFixed(4)),
      Number(se.toFixed(4)),
    ]);
    expect(table).toEqual([
      [6, 21, 3, 0.8571, 0.0764],
      [7, 17, 1, 0.8067, 0.0869],
      [10, 15, 1, 0.7529, 0.0963],
      [13, 12, 1, 0.6902, 0.1068],
      [16, 11, 1, 0.6275, 0.1141],
      [22, 7, 1, 0.5378, 0.1282],
      [23, 6, 1, 0.4482, 0.1346],
    ]);
    expect(medianSurvival(kaplanMeier(treated))).toBe(23);
  });

  it('placebo', () => {
    const steps = kaplanMeier(placebo);
    const expected = [
      0.9048, 0.8095, 0.7619, 0.6667, 0.5714, 0.381, 0.2857, 0.1905, 0.1429, 0.0952, 0.0476, 0,
    ];
    expect(steps.map(({ survival }) => Number(survival.toFixed(4)))).toEqual(expected);
    expect(medianSurvival(steps)).toBe(8);
  });

  it('log-rank between them', () => {
    const { observed, expected, variance, chiSquare } = logRank(treated, placebo);
    expect(observed).toBe(9);
    expect(expected).toBeCloseTo(19.2505, 4);
    expect(variance).toBeCloseTo(6.257, 3);
    expect(chiSquare).toBeCloseTo(16.793, 3);
  });
});

type Ending = 'paid' | 'left';
const trials: readonly Followed<Ending>[] = [
  ...[5, 9, 14].map((time) => ({ time, event: 'paid' as const })),
  ...[3, 7, 12].map((time) => ({ time, event: 'left' as const })),
  ...[4, 8, 10, 13].map((time) => ({ time, event: null })),
];

describe('Aalen-Johansen', () => {
  // Source: computed by hand, independently of this project; one less Kaplan-Meier would say 1.00 at 14.
  it('counts who left as gone, not as open', () => {
    const paid = aalenJohansen<Ending>(trials, 'paid');
    const at = (time: number) => paid.find((step) => step.time === time)?.incidence;
    expect(at(5)).toBeCloseTo(0.1125, 12);
    expect(at(9)).toBeCloseTo(0.2475, 12);
    expect(at(14)).toBeCloseTo(0.6075, 12);
    const left = aalenJohansen<Ending>(trials, 'left').at(-1)?.incidence ?? 0;
    expect(left + 0.6075).toBeCloseTo(1, 12);
    for (const { incidence, interval } of paid) {
      expect(interval.low).toBeLessThanOrEqual(incidence);
      expect(interval.high).toBeGreaterThanOrEqual(incidence);
    }
  });

  // Source: definition; with a single kind of event it is one less Kaplan-Meier, with Greenwood's standard error.
  it('is Kaplan-Meier where nothing competes', () => {
    const person = fc.record({
      time: fc.integer({ min: 0, max: 20 }),
      event: fc.constantFrom('paid' as const, null),
    });
    fc.assert(
      fc.property(fc.array(person, { minLength: 1, maxLength: 40 }), (people) => {
        const steps = kaplanMeier(people);
        aalenJohansen(people, 'paid').forEach(({ incidence, se }, i) => {
          expect(incidence).toBeCloseTo(1 - (steps[i]?.survival ?? 0), 10);
          const left = steps[i]?.survival ?? 0;
          if (left > 0) expect(se).toBeCloseTo(steps[i]?.se ?? 0, 8);
        });
      }),
      { seed: 32 },
    );
  });

  it('refuses nobody, and a time that is none', () => {
    expect(() => kaplanMeier([])).toThrow(/Nobody/);
    expect(() => aalenJohansen([{ time: -1, event: 'paid' }], 'paid')).toThrow(/Person 1/);
    expect(() => logRank(treated, [])).toThrow(/Both groups/);
  });
});
