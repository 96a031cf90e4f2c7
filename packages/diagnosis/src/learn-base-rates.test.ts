import { causeById, causes } from '@ballfirst/library/causes';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blindTurn } from './blind-turn.ts';
import { type ChosenCause, learnBaseRates, ratesById } from './learn-base-rates.ts';
import { rank } from './rank.ts';

const fat: ChosenCause = { fault: 'fat', causeId: 'dip', views: ['face-on'], blind: true, overruled: false };
const of = (id: string, diagnoses: readonly ChosenCause[]) => {
  const found = learnBaseRates(causes, diagnoses).find(({ causeId }) => causeId === id);
  if (found === undefined) throw new Error(id);
  return found;
};

describe('learned base rates', () => {
  it('begin with the rates of the library', () => {
    const { baseRate: rate } = causeById('dip');
    expect(of('dip', [])).toEqual({ causeId: 'dip', chosen: 0, seen: 0, expected: 0, rate });
  });

  /** Two causes of fat: .3 with the weight .6, .45 with .4, so that each is expected on every other swing. */
  const two = [
    { ...causeById('dip'), baseRate: 0.3, brings: { fat: 3 } },
    { ...causeById('sway-away'), baseRate: 0.45, brings: { fat: 2 } },
  ] as const;
  const four = [fat, fat, { ...fat, blind: false, overruled: true }, fat];

  // Source: by hand. Odds .3/.7 times (1.8 + 4)/(1.8 + 2), and .45/.55 times 2.7/(2.7 + 2).
  it('move with what coaches choose freely, against what the library expects', () => {
    const [dip, sway] = learnBaseRates(two, four);
    expect(dip).toMatchObject({ chosen: 4, seen: 4, expected: 2 });
    expect(dip?.rate).toBeCloseTo(0.39545, 5);
    expect(sway).toMatchObject({ chosen: 0, seen: 4 });
    expect(sway?.expected).toBeCloseTo(2, 12);
    expect(sway?.rate).toBeCloseTo(0.31974, 5);
  });

  it('stay where causes are named as often as expected, however often', () => {
    const even = ['dip', 'sway-away'].map((causeId) => ({ ...fat, causeId, swings: 500 }));
    for (const [i, { rate }] of learnBaseRates(two, even).entries()) {
      expect(rate).toBeCloseTo(two[i]?.baseRate ?? 0, 12);
    }
  });

  it('expect one first cause of each swing, among those that could be seen', () => {
    const learned = learnBaseRates(causes, four);
    expect(learned.reduce((sum, { expected }) => sum + expected, 0)).toBeCloseTo(4, 12);
    for (const { seen, expected } of learned) expect(expected > 0).toBe(seen > 0);
  });

  it('count swings that were chosen alike together, and give a ranking those of which something was learned', () => {
    const [one] = learnBaseRates(two, [{ ...fat, swings: 4 }]);
    expect(one).toEqual(learnBaseRates(two, four)[0]);
    const rates = ratesById(learnBaseRates(causes, four));
    expect(Object.keys(rates)).toContain('dip');
    expect(Object.keys(rates)).not.toContain('in-to-out');
    expect(ratesById(learnBaseRates(causes, []))).toEqual({});
  });

  it('learn nothing from a diagnosis that followed the ranking', () => {
    expect(of('dip', [{ ...fat, blind: false }])).toMatchObject({ chosen: 0, seen: 0 });
  });

  it('learn nothing of a cause that could not be seen, or does not bring the fault about', () => {
    expect(of('in-to-out', [fat]).seen).toBe(0);
    expect(of('in-to-out', [{ ...fat, views: ['face-on', 'down-the-line'] }]).seen).toBe(1);
    expect(of('lift', [fat]).seen).toBe(0);
    expect(of('grip-tension', [{ ...fat, fault: 'topped' }]).seen).toBe(0);
  });

  it('stay rates that a ranking can take', () => {
    fc.assert(
      fc.property(fc.nat({ max: 300 }), fc.nat({ max: 300 }), (yes, no) => {
        const rates = ratesById(
          learnBaseRates(causes, [
            ...Array.from({ length: yes }, () => fat),
            ...Array.from({ length: no }, () => ({ ...fat, causeId: 'sway-away' })),
          ]),
        );
        for (const rate of Object.values(rates)) {
          expect(rate).toBeGreaterThan(0);
          expect(rate).toBeLessThan(1);
        }
        expect(
          rank({ fault: 'fat', readings: [], observations: [], causes, baseRates: rates }).length,
        ).toBeGreaterThan(0);
      }),
      { numRuns: 20, seed: 71 },
    );
  });
});

describe('the blind turn', () => {
  it('comes to one submission in five, always the same ones', () => {
    const ids = Array.from(
      { length: 5000 },
      (_, i) => `0190a6a0-0000-7000-8000-0000${((i * 2654435761) % 2 ** 32).toString(16).padStart(8, '0')}`,
    );
    const share = ids.filter(blindTurn).length / ids.length;
    expect(share).toBeGreaterThan(0.17);
    expect(share).toBeLessThan(0.23);
    expect(ids.map(blindTurn)).toEqual(ids.map(blindTurn));
    expect(() => blindTurn('nobody')).toThrow(RangeError);
  });
});
