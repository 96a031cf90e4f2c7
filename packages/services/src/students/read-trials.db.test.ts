import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff } from '@ballfirst/testing/acting';
import {
  createAcademy,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createEntry, createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Reply } from '../operation-types.ts';
import { readTrials } from './read-trials.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const hours = (count: number): Date => new Date(factoryNow.getTime() + count * 3_600_000);
const days = (count: number): Date => hours(24 * count);

const house = async (given: Parameters<typeof createAcademy>[1] = {}) => {
  const { id: academyId } = await createAcademy(test.db, given);
  const manager = await createMembership(test.db, { academyId, role: 'manager' });
  const coach = await createMembership(test.db, { academyId });
  const join = async (name: string, more: Partial<Parameters<typeof createStudent>[1]> = {}) => {
    const member = await createMembership(test.db, { academyId, role: 'student', name });
    return createStudent(test.db, {
      academyId,
      membershipId: member.id,
      trialStartedAt: days(-5),
      trialEndsAt: days(9),
      ...more,
    });
  };
  const answer = async (studentId: string, readAt: Date | null, status = 'open') => {
    const swing = await createSubmission(test.db, {
      academyId,
      studentId,
      status: 'answered',
      sentAt: days(-4),
      answeredAt: hours(-94),
    });
    const programme = await createProgramme(test.db, {
      academyId,
      studentId,
      submissionId: swing.id,
      status,
    });
    await createReply(test.db, programme, { byMembership: coach.id, sentAt: hours(-94), readAt });
    return programme;
  };
  return { academyId, ctx: actingStaff(world, manager), coach, join, answer };
};

const byName = ({ items }: Reply<'readTrials'>) =>
  Object.fromEntries(items.map((item) => [item.student.name, item]));

describe('open trials', () => {
  it('say where each stands still and what to do', async () => {
    const { academyId, ctx, join, answer } = await house();
    await join('none');
    const waiting = await join('waiting');
    await createSubmission(test.db, { academyId, studentId: waiting.id, sentAt: days(-1) });
    await answer((await join('unread')).id, null);
    await answer((await join('idle')).id, days(-3));
    const moving = await answer((await join('moving')).id, days(-3));
    await createEntry(test.db, moving, { at: days(-2), localDate: '2026-03-08', verdict: 'passed' });
    const ending = await answer((await join('ending', { trialEndsAt: days(2) })).id, days(-3));
    await createEntry(test.db, ending, { at: days(-2), localDate: '2026-03-08' });
    await answer((await join('held')).id, days(-3), 'held');
    await join('paid', { standing: 'paid' });

    const page = await readTrials({ ctx, input: { limit: 50 } });
    const rows = byName(page);
    expect(page.items[0]?.student.name).toBe('ending');
    expect(Object.fromEntries(page.items.map(({ student, stop }) => [student.name, stop]))).toEqual({
      none: 'no-first-swing',
      waiting: 'waits-for-us',
      unread: 'reply-unread',
      idle: 'no-practice',
      moving: 'moving',
      ending: 'ending',
      held: 'held',
    });
    expect(rows.held?.nextAction).toMatch(/clinician/);
    // Sent on Friday at nine, answered at eleven.
    expect(rows.moving).toMatchObject({
      replyHours: 2,
      day: 6,
      days: 14,
      firstSwingAt: days(-4).toISOString(),
      firstReplyAt: hours(-94).toISOString(),
      replyReadAt: days(-3).toISOString(),
      practiceEntries: 1,
      rungsPassed: 1,
    });
  });

  it('count the time to the first reply in working hours', async () => {
    const { academyId, ctx, coach, join } = await house();
    const student = await join('weekend');
    // Sent on Friday 6 March at four, answered on Monday 9 March at ten: an hour on each day.
    const swing = await createSubmission(test.db, {
      academyId,
      studentId: student.id,
      status: 'answered',
      sentAt: new Date('2026-03-06T16:00:00Z'),
      answeredAt: new Date('2026-03-09T10:00:00Z'),
    });
    const programme = await createProgramme(test.db, {
      academyId,
      studentId: student.id,
      submissionId: swing.id,
    });
    await createReply(test.db, programme, {
      byMembership: coach.id,
      sentAt: new Date('2026-03-09T10:00:00Z'),
    });
    const { items } = await readTrials({ ctx, input: { limit: 50 } });
    expect(items[0]?.replyHours).toBe(2);
  });

  it('that begin with the first swing stand last, on day 0; an earlier trial does not count', async () => {
    const { ctx, join, answer } = await house({ trialStarts: 'first-swing' });
    await join('running');
    const fresh = await join('again', { trialStartedAt: null, trialEndsAt: null });
    await answer(fresh.id, null);
    const first = await readTrials({ ctx, input: { limit: 1 } });
    const second = await readTrials({ ctx, input: { limit: 1, after: first.next ?? '' } });
    expect([...first.items, ...second.items].map(({ student }) => student.name)).toEqual([
      'running',
      'again',
    ]);
    expect(second.next).toBeNull();
    expect(second.items[0]).toMatchObject({ day: 0, stop: 'no-first-swing', firstSwingAt: null });
  });

  it('come with the share of matured ones that became paid within a week of their end', async () => {
    const { academyId, ctx, join } = await house();
    const ended = { standing: 'lapsed', trialStartedAt: days(-40), trialEndsAt: days(-26) };
    const paidAt = async (studentId: string, at: Date) =>
      withAcademy(test.db, academyId, (tx) =>
        tx.standingChange.create({
          data: {
            academyId,
            id: newId(),
            studentId,
            fromStanding: 'trial',
            toStanding: 'paid',
            reason: '',
            at,
          },
        }),
      );
    for (let count = 0; count < 8; count += 1) {
      await paidAt((await join(`joined ${count}`, ended)).id, days(-27));
    }
    await paidAt((await join('too late', ended)).id, days(-10));
    await join('never', ended);
    await join('too young', { ...ended, trialEndsAt: days(-6) });
    const { matured } = await readTrials({ ctx, input: { limit: 50 } });
    // 8 of 10: Wilson 1927, (0.4902, 0.9433) by Newcombe's method 3, to four places.
    expect(matured).toMatchObject({ trials: 10, paid: 8, share: 0.8 });
    expect(matured.low).toBeCloseTo(0.4902, 4);
    expect(matured.high).toBeCloseTo(0.9433, 4);
  });

  it('are for managers, and of an academy without any there is no share', async () => {
    const { ctx, coach } = await house();
    expect(await readTrials({ ctx, input: { limit: 50 } })).toEqual({
      items: [],
      next: null,
      incidence: null,
      matured: { trials: 0, paid: 0, share: null, low: null, high: null },
    });
    await expect(readTrials({ ctx: actingStaff(world, coach), input: { limit: 50 } })).rejects.toMatchObject({
      code: 'not-allowed',
    });
  });
});
