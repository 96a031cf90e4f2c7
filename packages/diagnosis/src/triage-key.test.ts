import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Miss, usualCosts } from './lead-fault.ts';
import { reasonWords } from './reason-words.ts';
import { type TriageInput, triageKey } from './triage-key.ts';

const hourMs = 3_600_000;
// An academy that never closes: working hours are hours.
const workBefore = (instant: Date, hours: number) => new Date(instant.getTime() - hours * hourMs);
const quiet: TriageInput = {
  answerBy: new Date('2026-03-10T12:00:00Z'),
  promiseHours: 16,
  leadFault: null,
  pain: 'none',
  painAcknowledged: false,
  trialEnd: null,
  workingDayHours: 8,
  firstSwing: false,
  checkIn: false,
  workBefore,
};

describe('triage key', () => {
  it('is the promise where nothing else speaks', () => {
    const { key, headStartHours, pinned, reasons } = triageKey(quiet);
    expect(key).toEqual(quiet.answerBy);
    expect(headStartHours).toBe(0);
    expect(pinned).toBe(false);
    expect(reasons).toEqual([{ kind: 'promise', answerBy: '2026-03-10T12:00:00.000Z' }]);
  });

  it('moves a costly fault ahead, never by more than half the promise', () => {
    const fault = fc.constantFrom(...(Object.keys(usualCosts) as Miss[]));
    fc.assert(
      fc.property(fault, fc.double({ min: 0, max: 1, noNaN: true }), (name, probability) => {
        const { key, headStartHours } = triageKey({ ...quiet, leadFault: { fault: name, probability } });
        expect(headStartHours).toBeGreaterThanOrEqual(0);
        expect(headStartHours).toBeLessThanOrEqual(8);
        expect(quiet.answerBy.getTime() - key.getTime()).toBeCloseTo(headStartHours * hourMs, -1);
      }),
      { seed: 31 },
    );
    const start = (probability: number) =>
      triageKey({ ...quiet, leadFault: { fault: 'fat', probability } }).headStartHours;
    expect(start(0.9)).toBeGreaterThan(start(0.5));
  });

  it('is due two working days before a trial ends, where that is earlier', () => {
    const trialEnd = new Date('2026-03-10T20:00:00Z');
    const { key, reasons } = triageKey({ ...quiet, trialEnd });
    expect(key).toEqual(new Date('2026-03-10T04:00:00Z'));
    expect(reasons[0]).toEqual({ kind: 'trial-ending', endsAt: trialEnd.toISOString() });
    expect(triageKey({ ...quiet, trialEnd: new Date('2026-04-01T00:00:00Z') }).key).toEqual(quiet.answerBy);
  });

  it('pins new pain before everything until a coach has seen it', () => {
    const pain = triageKey({ ...quiet, pain: 'worse', answerBy: new Date('2026-06-01T00:00:00Z') });
    const dear = triageKey({ ...quiet, leadFault: { fault: 'shank', probability: 1 } });
    expect(pain.pinned).toBe(true);
    expect(pain.key.getTime()).toBeLessThan(dear.key.getTime());
    expect(pain.reasons[0]).toEqual({ kind: 'pain', pain: 'worse' });
    const seen = triageKey({ ...quiet, pain: 'worse', painAcknowledged: true });
    expect(seen.pinned).toBe(false);
    expect(seen.key).toEqual(quiet.answerBy);
    const sooner = triageKey({ ...quiet, pain: 'new', answerBy: new Date('2026-05-01T00:00:00Z') });
    expect(sooner.key.getTime()).toBeLessThan(pain.key.getTime());
  });

  it('refuses a promise of no length', () => {
    expect(() => triageKey({ ...quiet, promiseHours: 0 })).toThrow(RangeError);
    expect(() => triageKey({ ...quiet, workingDayHours: -1 })).toThrow(RangeError);
  });

  it('puts its reasons into words', () => {
    const { reasons } = triageKey({
      ...quiet,
      pain: 'new',
      firstSwing: true,
      checkIn: true,
      trialEnd: new Date('2026-03-10T20:00:00Z'),
      leadFault: { fault: 'fat', probability: 0.9 },
    });
    const words = reasons.map((reason) => reasonWords(reason, (instant) => instant.slice(0, 10)));
    expect(words).toEqual([
      'New pain reported',
      'Trial ends 2026-03-10',
      'Fat costs most (90 % sure): 5 working hours ahead',
      'First swing of this student',
      'Answers a check-in',
      'Answer promised by 2026-03-10',
    ]);
  });
});
