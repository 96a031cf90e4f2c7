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

  it('takes the opposite miss under an open programme as progress', () => {
    const thin = { fault: 'thin', probability: 1 } as const;
    const { headStartHours, reasons } = triageKey({ ...quiet, leadFault: thin, openProgrammeFault: 'fat' });
    expect(headStartHours).toBe(0);
    expect(reasons[0]).toEqual({ kind: 'progress' });
    const other = triageKey({ ...quiet, leadFault: thin, openProgrammeFault: 'topped' });
    expect(other.headStartHours).toBeGreaterThan(0);
    expect(triageKey({ ...quiet, leadFault: thin }).headStartHours).toBe(other.headStartHours);
  });

  it('raises an old fault that is back and practice that is stuck, and says when a promise is at risk', () => {
    const raised = triageKey({ ...quiet, oldFaultBack: true, stuck: true, promiseAtRisk: true });
    expect(raised.headStartHours).toBe(4);
    expect(raised.reasons.map(({ kind }) => kind)).toEqual([
      'promise-at-risk',
      'old-fault',
      'stuck',
      'promise',
    ]);
    const shank = { fault: 'shank', probability: 1 } as const;
    expect(triageKey({ ...quiet, leadFault: shank, oldFaultBack: true, stuck: true }).headStartHours).toBe(8);
  });

  it('lets nothing overtake that was sent after the promise of another had run out', () => {
    const hours = fc.double({ min: 0, max: 400, noNaN: true });
    const swing = fc.record({
      sentAt: hours,
      probability: fc.double({ min: 0, max: 1, noNaN: true }),
      fault: fc.constantFrom(...(Object.keys(usualCosts) as Miss[])),
      trialEndsAt: fc.option(hours, { nil: null }),
      oldFaultBack: fc.boolean(),
      stuck: fc.boolean(),
    });
    const epoch = new Date('2026-03-02T00:00:00Z').getTime();
    const at = (hour: number) => new Date(epoch + hour * hourMs);
    fc.assert(
      fc.property(fc.array(swing, { minLength: 2, maxLength: 30 }), (swings) => {
        const placed = swings.map(({ sentAt, fault, probability, trialEndsAt, ...more }) => ({
          sentAt,
          key: triageKey({
            ...quiet,
            ...more,
            answerBy: at(sentAt + quiet.promiseHours),
            leadFault: { fault, probability },
            trialEnd: trialEndsAt === null ? null : at(trialEndsAt),
          }).key.getTime(),
        }));
        for (const one of placed) {
          const overtaking = placed.filter(({ sentAt, key }) => sentAt > one.sentAt && key < one.key).length;
          const inWindow = placed.filter(
            ({ sentAt }) => sentAt > one.sentAt && sentAt < one.sentAt + quiet.promiseHours,
          ).length;
          expect(overtaking).toBeLessThanOrEqual(inWindow);
        }
      }),
      { numRuns: 200, seed: 32 },
    );
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
