import { describe, expect, it } from 'vitest';
import { type TrialCourse, trialIncidence } from './trial-incidence.ts';

const start = new Date('2026-01-01T09:00:00Z');
const on = (day: number): Date => new Date(start.getTime() + (day - 1) * 86_400_000 + 3_600_000);
const now = new Date('2026-06-01T00:00:00Z');
/** A trial of fourteen days that began so many days before now, with what ended it on which day. */
const trial = (given: { paid?: number; left?: number; begun?: number } = {}): TrialCourse => {
  const shift = given.begun === undefined ? 0 : now.getTime() - given.begun * 86_400_000 - start.getTime();
  const moved = (at: Date): Date => new Date(at.getTime() + shift);
  return {
    startedAt: moved(start),
    endsAt: moved(on(15)),
    paidAt: given.paid === undefined ? null : moved(on(given.paid)),
    leftAt: given.left === undefined ? null : moved(on(given.left)),
  };
};

describe('the share of trials that become paid', () => {
  // Worked by hand with the product-limit recipe: paid 5, 9, 14; left 3, 7, 12; open 4, 8, 10, 13 (independent fixture).
  it('is the incidence with leaving as a competing event and open trials censored', () => {
    const open = (days: number) => trial({ begun: days - 0.5 });
    const found = trialIncidence(
      [
        ...[5, 9, 14].map((paid) => trial({ paid })),
        ...[3, 7, 12].map((left) => trial({ left })),
        ...[4, 8, 10, 13].map(open),
      ],
      now,
    );
    const shareOn = (day: number) => found?.steps.find((step) => step.day === day)?.share;
    expect(found).toMatchObject({ trials: 10, open: 4 });
    expect(shareOn(5)).toBeCloseTo(0.1125, 10);
    expect(shareOn(9)).toBeCloseTo(0.2475, 10);
    expect(shareOn(14)).toBeCloseTo(0.6075, 10);
    expect(found?.share).toBeCloseTo(0.6075, 10);
  });

  it('without open trials is the plain share; whoever joins a week after the end counts, later not', () => {
    const found = trialIncidence(
      [trial({ paid: 21 }), trial({ paid: 30 }), trial(), trial({ left: 2 })],
      now,
    );
    expect(found?.share).toBeCloseTo(0.25, 12);
    expect(found?.low).toBeLessThan(0.25);
    expect(found?.high).toBeGreaterThan(0.25);
  });

  it('is unknown while every trial is open, and nothing when nobody joins', () => {
    expect(trialIncidence([], now)).toBeNull();
    expect(trialIncidence([trial({ begun: 3 })], now)).toBeNull();
    expect(trialIncidence([trial(), trial({ left: 4 })], now)).toMatchObject({ share: 0 });
  });
});
