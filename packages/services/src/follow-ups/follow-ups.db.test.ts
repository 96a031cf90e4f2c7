import { dueCheckIns } from '@ballfirst/db/crossings/due-check-ins';
import { dueTrialEnds } from '@ballfirst/db/crossings/due-trial-ends';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { painSentence } from '@ballfirst/library/cautions';
import { createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { tellCheckInDue } from '../mail/tell-check-in-due.ts';
import { tellStanding } from '../mail/tell-standing.ts';
import { trialPeriod } from '../students/trial-period.ts';
import { endTrial } from './end-trial.ts';
import { scheduleCheckIn } from './schedule-check-in.ts';
import { sendDueCheckIn } from './send-due-check-in.ts';

let test: TestDatabase;
let world: SystemWorld;
let superuser: pg.Client;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
  superuser = new pg.Client({ connectionString: test.superuserUrl });
  await superuser.connect();
});
afterAll(async () => {
  await superuser.end();
  await test.close();
});
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

/** What the outbox holds of one kind for an academy: the app may write there, not read. */
const eventsOf = async (academyId: string, kind: string) => {
  const sql = 'SELECT id, payload FROM system.outbox WHERE academy_id = $1 AND kind = $2 ORDER BY id';
  return (await superuser.query<{ id: string; payload: unknown }>(sql, [academyId, kind])).rows;
};
const at = (text: string): Date => new Date(text);
const moment = (before: Date): Date => new Date(before.getTime() - 1);

const repliedTo = async (zone: string, sentAt: Date) => {
  const membership = await createMembership(test.db, { role: 'student', name: 'Ada', zone });
  const { academyId } = membership;
  const student = await createStudent(test.db, { academyId, membershipId: membership.id });
  const programme = await createProgramme(test.db, { academyId, studentId: student.id });
  const reply = await createReply(test.db, programme, { sentAt });
  const ctx = world.contextOf(academyId);
  return { academyId, student, programme, ctx, input: { eventId: newId(), replyId: reply.id } };
};
type Replied = Awaited<ReturnType<typeof repliedTo>>;
const checkInsOf = ({ academyId }: Replied) =>
  withAcademy(test.db, academyId, (tx) => tx.checkIn.findMany({ where: { academyId } }));
const scheduled = async (it: Replied): Promise<string> => {
  const { checkInId } = await scheduleCheckIn(it);
  if (checkInId === null) throw new Error('no check-in');
  return checkInId;
};

describe('a check-in', () => {
  // Offsets by the IANA time zone database: New York leaves -5 for -4 on 8 March 2026, Auckland +13 for +12 on 5 April.
  it.each([
    ['America/New_York', '2026-03-05T15:00:00Z', '2026-03-12T08:00', '2026-03-12T12:00:00Z'],
    ['Pacific/Auckland', '2026-03-30T21:00:00Z', '2026-04-07T08:00', '2026-04-06T20:00:00Z'],
  ])('is due at eight on the wall in %s, over a clock change', async (zone, sentAt, localTime, dueAt) => {
    const it = await repliedTo(zone, at(sentAt));
    const checkInId = await scheduled(it);
    expect(await checkInsOf(it)).toMatchObject([
      { id: checkInId, localTime, zone, dueAt: at(dueAt), asks: 'clip', status: 'scheduled' },
    ]);
    const send = () => sendDueCheckIn({ ctx: it.ctx, input: { checkInId } });
    const due = async () =>
      (await dueCheckIns(test.db, { now: world.now, limit: 100 })).map((row) => row.checkInId);

    world.now = moment(at(dueAt));
    expect(await due()).not.toContain(checkInId);
    expect(await send()).toEqual({ outcome: 'nothing' });

    world.now = at(dueAt);
    expect(await due()).toContain(checkInId);
    expect(await send()).toEqual({ outcome: 'sent' });
    expect(await due()).not.toContain(checkInId);
  });

  it('is set once for its reply, sent once and told once, of ten runs at the same time', async () => {
    const it = await repliedTo('UTC', factoryNow);
    await Promise.all(Array.from({ length: 10 }, () => scheduleCheckIn(it)));
    const [row, ...more] = await checkInsOf(it);
    if (row === undefined) throw new Error('no check-in');
    expect(more).toEqual([]);
    world.now = row.dueAt;
    const { ctx } = it;
    const runs = await Promise.all(
      Array.from({ length: 10 }, () => sendDueCheckIn({ ctx, input: { checkInId: row.id } })),
    );
    expect(runs.filter(({ outcome }) => outcome === 'sent')).toHaveLength(1);
    const [event, ...others] = await eventsOf(it.academyId, 'check-in.due');
    expect(others).toEqual([]);
    const tell = () => tellCheckInDue({ ctx, input: { eventId: event?.id ?? '', checkInId: row.id } });
    await Promise.all(Array.from({ length: 10 }, tell));
    expect(world.sendings).toHaveLength(1);
    expect(world.sendings[0]?.text).toContain(`/send?check-in=${row.id}`);
    expect(world.sendings[0]?.text).toContain(painSentence);
  });

  it.each(['held', 'replaced', 'done'])('of a programme that is %s is cancelled', async (status) => {
    const it = await repliedTo('UTC', factoryNow);
    const checkInId = await scheduled(it);
    const { academyId } = it;
    await withAcademy(test.db, academyId, (tx) =>
      tx.programme.updateMany({ where: { academyId }, data: { status } }),
    );
    world.now = at('2026-04-01T00:00:00Z');
    expect(await sendDueCheckIn({ ctx: it.ctx, input: { checkInId } })).toEqual({ outcome: 'cancelled' });
    expect(await eventsOf(academyId, 'check-in.due')).toEqual([]);
  });

  it('asks for nothing once pain holds practice or the swing has come', async () => {
    const it = await repliedTo('UTC', factoryNow);
    const checkInId = await scheduled(it);
    const { academyId, ctx } = it;
    world.now = at('2026-04-01T00:00:00Z');
    await sendDueCheckIn({ ctx, input: { checkInId } });
    const tell = () => tellCheckInDue({ ctx, input: { eventId: newId(), checkInId } });
    await withAcademy(test.db, academyId, (tx) =>
      tx.programme.updateMany({ where: { academyId }, data: { status: 'held' } }),
    );
    expect(await tell()).toEqual({ sent: 0 });
    await withAcademy(test.db, academyId, async (tx) => {
      await tx.programme.updateMany({ where: { academyId }, data: { status: 'open' } });
      await tx.checkIn.updateMany({ where: { academyId }, data: { status: 'done' } });
    });
    expect(await tell()).toEqual({ sent: 0 });
  });

  it('comes with no reply that has no programme', async () => {
    const { academyId, id: studentId } = await createStudent(test.db);
    const programme = await createProgramme(test.db, { academyId, studentId });
    const reply = await createReply(test.db, programme, { programmeId: null });
    const input = { eventId: newId(), replyId: reply.id };
    expect(await scheduleCheckIn({ ctx: world.contextOf(academyId), input })).toEqual({ checkInId: null });
  });

  it('of another academy is not there', async () => {
    const it = await repliedTo('UTC', factoryNow);
    const checkInId = await scheduled(it);
    world.now = at('2026-04-01T00:00:00Z');
    const ctx = world.contextOf((await createMembership(test.db)).academyId);
    const missing = { code: 'not-found' };
    await expect(sendDueCheckIn({ ctx, input: { checkInId } })).rejects.toMatchObject(missing);
    await expect(scheduleCheckIn({ ctx, input: { ...it.input, eventId: newId() } })).rejects.toMatchObject(
      missing,
    );
    expect(await checkInsOf(it)).toMatchObject([{ status: 'scheduled' }]);
  });
});

describe('a trial', () => {
  const onTrial = async () => {
    const zone = 'America/New_York';
    const membership = await createMembership(test.db, { role: 'student', zone });
    const { academyId } = membership;
    const period = trialPeriod({ startedAt: at('2026-03-01T15:00:00Z'), days: 14, zone });
    const student = await createStudent(test.db, { academyId, membershipId: membership.id, ...period });
    return { academyId, student, ctx: world.contextOf(academyId), input: { studentId: student.id } };
  };

  it('ends once at the student’s own midnight, over a clock change, with one letter', async () => {
    const { academyId, student, ctx, input } = await onTrial();
    // The 14th day ends as 14 March turns into the 15th: 00:00 at -4, after the change of 8 March.
    const midnight = at('2026-03-15T04:00:00Z');
    const due = async () =>
      (await dueTrialEnds(test.db, { now: world.now, limit: 100 })).map((row) => row.studentId);
    world.now = moment(midnight);
    expect(await due()).not.toContain(student.id);
    expect(await endTrial({ ctx, input })).toEqual({ ended: false });

    world.now = midnight;
    expect(await due()).toContain(student.id);
    const runs = await Promise.all(Array.from({ length: 10 }, () => endTrial({ ctx, input })));
    expect(runs.filter(({ ended }) => ended)).toHaveLength(1);
    const found = await withAcademy(test.db, academyId, async (tx) => ({
      standings: await tx.standingChange.findMany({ where: { academyId } }),
      student: await tx.student.findUniqueOrThrow({ where: { academyId_id: { academyId, id: student.id } } }),
    }));
    expect(found.student.standing).toBe('lapsed');
    expect(found.standings).toMatchObject([{ fromStanding: 'trial', toStanding: 'lapsed', at: midnight }]);

    const [event, ...more] = await eventsOf(academyId, 'standing.changed');
    expect(more).toEqual([]);
    expect(event?.payload).toEqual({ studentId: student.id, to: 'lapsed' });
    const tell = () =>
      tellStanding({ ctx, input: { eventId: event?.id ?? '', studentId: student.id, to: 'lapsed' } });
    await Promise.all(Array.from({ length: 10 }, tell));
    expect(world.sendings.map(({ subject }) => subject)).toEqual(['Your trial with An academy has ended']);
  });

  it('of one who pays meanwhile does not end', async () => {
    const { academyId, ctx, input } = await onTrial();
    await withAcademy(test.db, academyId, (tx) =>
      tx.student.updateMany({ where: { academyId }, data: { standing: 'paid' } }),
    );
    world.now = at('2026-04-01T00:00:00Z');
    expect(await endTrial({ ctx, input })).toEqual({ ended: false });
  });

  it('of another academy is not there', async () => {
    const { input } = await onTrial();
    world.now = at('2026-04-01T00:00:00Z');
    const ctx = world.contextOf((await createMembership(test.db)).academyId);
    await expect(endTrial({ ctx, input })).rejects.toMatchObject({ code: 'not-found' });
  });
});
