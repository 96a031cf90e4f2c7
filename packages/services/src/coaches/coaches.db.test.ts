import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff } from '@ballfirst/testing/acting';
import { createMembership, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { extendTrial } from '../students/extend-trial.ts';
import { readCoaches } from './read-coaches.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});
const at = (text: string): Date => new Date(text);

describe('the coaches', () => {
  it('are told by working hours, half and nine in ten, and by the promise', async () => {
    const manager = await createMembership(test.db, { role: 'manager', name: 'Zoe' });
    const { academyId } = manager;
    const coach = await createMembership(test.db, { academyId, role: 'coach', name: 'Abe' });
    world.now = at('2026-03-20T12:00:00Z');
    // Monday to Friday, nine to five: 2, 4 and 10 working hours (sent on Friday at two, answered on Monday at four).
    const answered: [string, string, string][] = [
      ['2026-03-10T09:00:00Z', '2026-03-10T11:00:00Z', '2026-03-11T17:00:00Z'],
      ['2026-03-11T10:00:00Z', '2026-03-11T14:00:00Z', '2026-03-12T17:00:00Z'],
      ['2026-03-13T14:00:00Z', '2026-03-16T16:00:00Z', '2026-03-16T12:00:00Z'],
    ];
    for (const [sent, replied, answerBy] of answered) {
      const { id: studentId } = await createStudent(test.db, { academyId });
      const submission = await createSubmission(test.db, {
        ...{ academyId, studentId, sentAt: at(sent), answerBy: at(answerBy) },
        ...{ status: 'answered', answeredAt: at(replied) },
      });
      const programme = await createProgramme(test.db, { academyId, studentId, submissionId: submission.id });
      await createReply(test.db, programme, { byMembership: coach.id, sentAt: at(replied) });
    }
    const { id: studentId } = await createStudent(test.db, { academyId });
    await createSubmission(test.db, {
      ...{ academyId, studentId, status: 'waiting', answerBy: at('2026-03-20T11:00:00Z') },
      ...{ claimedBy: coach.id, claimedAt: world.now, claimExpiresAt: at('2026-03-20T12:30:00Z') },
    });
    const told = await readCoaches({ ctx: actingStaff(world, manager), input: { days: 30 } });
    expect(told).toMatchObject({ waiting: 1, late: 1, filmAgain: { share: 0, of: 3 } });
    expect(told.items[0]).toMatchObject({ name: 'Abe', claimed: 1, answered: 3, hoursHalf: 4 });
    // Type 7 at 0.9 of 2, 4, 10: 4 + 0.8 x 6.
    expect(told.items[0]?.hoursMost).toBeCloseTo(8.8, 9);
    expect(told.items[0]?.kept?.share).toBeCloseTo(2 / 3, 12);
    expect(told.items[1]).toMatchObject({ name: 'Zoe', answered: 0, hoursHalf: null, kept: null });
    await expect(readCoaches({ ctx: actingStaff(world, coach), input: { days: 30 } })).rejects.toMatchObject({
      code: 'not-allowed',
    });
  });
});

describe('a longer trial', () => {
  const onTrial = async (standing: 'trial' | 'lapsed') => {
    const manager = await createMembership(test.db, { role: 'manager' });
    const { academyId } = manager;
    const membership = await createMembership(test.db, {
      ...{ academyId, role: 'student', zone: 'America/New_York' },
    });
    const student = await createStudent(test.db, {
      ...{ academyId, membershipId: membership.id, standing },
      trialStartedAt: at('2026-02-20T15:00:00Z'),
      trialEndsAt: at('2026-03-06T05:00:00Z'),
    });
    const extend = (days: number) =>
      extendTrial({
        ctx: actingStaff(world, manager),
        input: { id: student.id, days, reason: 'was ill' },
      });
    return { academyId, student, extend };
  };

  it('goes on from its end to a local midnight, over the change of clocks', async () => {
    world.now = at('2026-03-05T12:00:00Z');
    const { extend } = await onTrial('trial');
    // Ended as 5 March turned into the 6th; seven days more end as the 12th turns into the 13th, at -4 by then.
    const told = await extend(7);
    expect(told).toMatchObject({ standing: 'trial', trialEndsAt: '2026-03-13T04:00:00.000Z' });
    expect(told.standings).toContainEqual(
      expect.objectContaining({ from: 'trial', to: 'trial', reason: 'was ill' }),
    );
  });

  it('of a lapsed student begins again today', async () => {
    world.now = at('2026-03-10T12:00:00Z');
    const { extend, academyId, student } = await onTrial('lapsed');
    expect(await extend(2)).toMatchObject({ standing: 'trial', trialEndsAt: '2026-03-12T04:00:00.000Z' });
    await withAcademy(test.db, academyId, (tx) =>
      tx.student.updateMany({ where: { academyId, id: student.id }, data: { standing: 'paid' } }),
    );
    await expect(extend(2)).rejects.toMatchObject({ code: 'standing-not-possible' });
  });
});
