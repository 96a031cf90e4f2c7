import { dueLookAfters } from '@ballfirst/db/crossings/due-look-afters';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { painSentence } from '@ballfirst/library/cautions';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { createEntry, createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { setReminderRule } from '../academy/set-reminder-rule.ts';
import { stopReminders } from '../identity/stop-reminders.ts';
import { tellNudge } from '../mail/tell-nudge.ts';
import { tellReplySent } from '../mail/tell-reply-sent.ts';
import { chooseReminders } from '../students/choose-reminders.ts';
import { lookAfterStudent } from './look-after-student.ts';

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

const at = (text: string): Date => new Date(text);
const onTrial = async (zone = 'Europe/Stockholm', joined = '2026-03-10T10:00:00Z') => {
  const membership = await createMembership(test.db, { role: 'student', name: 'Ada', zone });
  const { academyId } = membership;
  const student = await createStudent(test.db, {
    ...{ academyId, membershipId: membership.id, createdAt: at(joined) },
    ...{ trialStartedAt: at(joined), trialEndsAt: at('2026-03-23T23:00:00Z') },
  });
  const ctx = world.contextOf(academyId);
  return { academyId, student, ctx, input: { studentId: student.id } };
};
type OnTrial = Awaited<ReturnType<typeof onTrial>>;

/** The worker's tick and its letters, at an instant: what is due is looked at, what was set going is sent. */
const tick = async (it: OnTrial, now: string): Promise<string | null> => {
  world.now = at(now);
  const due = await dueLookAfters(test.db, { now: world.now, limit: 1000 });
  if (!due.some(({ studentId }) => studentId === it.student.id)) return null;
  const { nudge } = await lookAfterStudent(it);
  if (nudge === null) return null;
  const sql = `SELECT id, payload FROM system.outbox WHERE academy_id = $1 AND kind = 'nudge.due' ORDER BY id DESC`;
  const [event] = (await superuser.query<{ id: string; payload: { nudgeId: string } }>(sql, [it.academyId]))
    .rows;
  const input = { eventId: event?.id ?? '', nudgeId: event?.payload.nudgeId ?? '' };
  await Promise.all([tellNudge({ ctx: it.ctx, input }), tellNudge({ ctx: it.ctx, input })]);
  return nudge;
};
const subjects = () => world.sendings.map(({ subject }) => subject);

describe('a reminder', () => {
  it('comes at nine on the student’s wall clock, once, over the change of clocks', async () => {
    // Stockholm leaves +1 for +2 on 29 March 2026 (IANA time zone database).
    const it = await onTrial('Europe/Stockholm', '2026-03-27T10:00:00Z');
    await withAcademy(test.db, it.academyId, (tx) =>
      tx.student.updateMany({ data: { trialEndsAt: at('2026-04-20T22:00:00Z') } }),
    );
    expect(await tick(it, '2026-03-27T11:00:00Z')).toBeNull();
    expect(await tick(it, '2026-03-28T08:00:00Z')).toBeNull();
    expect(await tick(it, '2026-03-29T07:00:00Z')).toBeNull();
    expect(await tick(it, '2026-03-30T06:59:59Z')).toBeNull();
    expect(await tick(it, '2026-03-30T07:00:00Z')).toBe('first-swing');
    expect(await tick(it, '2026-03-30T07:00:30Z')).toBeNull();
    expect(await tick(it, '2026-03-31T07:00:00Z')).toBeNull();
    expect(subjects()).toEqual(['One swing is all it takes to start']);
    expect(world.sendings[0]?.text).toContain(painSentence);
  });

  it('is not made up for in the evening or the night, and days that were missed bring one', async () => {
    const it = await onTrial();
    await tick(it, '2026-03-10T11:00:00Z');
    expect(await tick(it, '2026-03-14T21:30:00Z')).toBeNull();
    expect(await tick(it, '2026-03-15T08:00:00Z')).toBe('first-swing');
    expect(subjects()).toHaveLength(1);
  });

  it('waits for a day without another letter', async () => {
    const it = await onTrial();
    const programme = await createProgramme(test.db, { academyId: it.academyId, studentId: it.student.id });
    const reply = await createReply(test.db, programme, { sentAt: at('2026-03-10T10:00:00Z') });
    await tick(it, '2026-03-12T06:00:00Z');
    world.now = at('2026-03-12T07:30:00Z');
    await tellReplySent({ ctx: it.ctx, input: { eventId: newId(), replyId: reply.id } });
    expect(await tick(it, '2026-03-12T08:00:00Z')).toBeNull();
    expect(await tick(it, '2026-03-13T08:00:00Z')).toBe('reply-unread');
  });

  it('ends by one click, by the student’s own choice, by the academy’s, and with the standing', async () => {
    const clicked = await onTrial();
    await tick(clicked, '2026-03-10T11:00:00Z');
    expect(await tick(clicked, '2026-03-13T08:00:00Z')).toBe('first-swing');
    const stopUrl = world.sendings[0]?.stopUrl ?? '';
    expect(stopUrl).toMatch(/^https:\/\/lessons\.example\.test\/api\/reminders\/stop\//);
    const token = stopUrl.split('/').at(-1) ?? '';
    expect(world.sendings[0]?.text).toContain(`/reminders#${token}`);
    const door = { resources: clicked.ctx.resources, address: '192.0.2.9', device: '', requestId: 'test' };
    await stopReminders({ ...door, input: { token } });
    await stopReminders({ ...door, input: { token } });
    await expect(stopReminders({ ...door, input: { token: 'x'.repeat(43) } })).rejects.toMatchObject({
      code: 'not-found',
    });
    expect(await tick(clicked, '2026-03-17T08:00:00Z')).toBeNull();
    await chooseReminders({ ctx: actingStudent(world, clicked.student), input: { reminders: true } });
    expect(await tick(clicked, '2026-03-18T08:00:00Z')).toBe('first-swing');

    const off = await onTrial();
    const manager = await createMembership(test.db, { academyId: off.academyId, role: 'manager' });
    const rules = await setReminderRule({
      ctx: actingStaff(world, manager),
      input: { kind: 'first-swing', on: false },
    });
    expect(rules.items.filter(({ on }) => !on).map(({ kind }) => kind)).toEqual(['first-swing']);
    await tick(off, '2026-03-10T11:00:00Z');
    expect(await tick(off, '2026-03-14T08:00:00Z')).toBeNull();

    const left = await onTrial();
    await tick(left, '2026-03-10T11:00:00Z');
    await withAcademy(test.db, left.academyId, (tx) => tx.student.updateMany({ data: { standing: 'left' } }));
    expect(await tick(left, '2026-03-14T08:00:00Z')).toBeNull();
  });

  it('leaves the day to a check-in that is due or gone, though its letter is not written yet', async () => {
    const it = await onTrial('UTC');
    const { academyId, student } = it;
    const programme = await createProgramme(test.db, {
      ...{ academyId, studentId: student.id },
      createdAt: at('2026-03-08T10:00:00Z'),
    });
    await createReply(test.db, programme, {
      sentAt: at('2026-03-08T10:00:00Z'),
      readAt: at('2026-03-08T11:00:00Z'),
    });
    const dueAt = at('2026-03-13T08:00:00Z');
    await withAcademy(test.db, academyId, async (tx) => {
      await tx.submission.updateMany({
        data: { status: 'answered', answeredAt: at('2026-03-08T10:00:00Z') },
      });
      await tx.checkIn.create({
        data: {
          ...{ academyId, id: newId(), studentId: student.id, programmeId: programme.id, asks: 'practice' },
          ...{ localTime: '2026-03-13T08:00', zone: 'UTC', dueAt, status: 'scheduled' },
        },
      });
    });
    await tick(it, '2026-03-10T11:00:00Z');
    // A worker that was down since yesterday: the check-in is still to be sent.
    expect(await tick(it, '2026-03-14T09:00:00Z')).toBeNull();
    const sentAt = at('2026-03-15T08:30:00Z');
    await withAcademy(test.db, academyId, (tx) =>
      tx.checkIn.updateMany({ data: { status: 'sent', sentAt } }),
    );
    expect(await tick(it, '2026-03-15T09:00:00Z')).toBeNull();
    await withAcademy(test.db, academyId, (tx) =>
      tx.checkIn.updateMany({ data: { status: 'cancelled', sentAt: null } }),
    );
    expect(await tick(it, '2026-03-16T09:00:00Z')).toBe('practice');
  });

  it('asks nobody to practise whose practice is held', async () => {
    const it = await onTrial();
    const programme = await createProgramme(test.db, {
      ...{ academyId: it.academyId, studentId: it.student.id },
      createdAt: at('2026-03-08T10:00:00Z'),
    });
    await createReply(test.db, programme, {
      sentAt: at('2026-03-08T10:00:00Z'),
      readAt: at('2026-03-08T11:00:00Z'),
    });
    await withAcademy(test.db, it.academyId, async (tx) => {
      await tx.submission.updateMany({
        data: { status: 'answered', answeredAt: at('2026-03-08T10:00:00Z') },
      });
      await tx.programme.updateMany({ data: { status: 'held' } });
    });
    await tick(it, '2026-03-10T11:00:00Z');
    expect(await tick(it, '2026-03-14T08:00:00Z')).toBeNull();
    await withAcademy(test.db, it.academyId, (tx) => tx.programme.updateMany({ data: { status: 'open' } }));
    expect(await tick(it, '2026-03-15T08:00:00Z')).toBe('practice');
  });

  it('is followed by the coach: a check-in unanswered for a week, a step not passed in five entries, each once', async () => {
    const it = await onTrial('UTC');
    const { academyId, student } = it;
    const programme = await createProgramme(test.db, { academyId, studentId: student.id });
    const checkInId = newId();
    await withAcademy(test.db, academyId, async (tx) => {
      await tx.submission.updateMany({
        data: { status: 'answered', answeredAt: at('2026-03-10T10:00:00Z') },
      });
      await tx.student.updateMany({ data: { standing: 'paid' } });
      await tx.checkIn.create({
        data: {
          ...{ academyId, id: checkInId, studentId: student.id, programmeId: programme.id, asks: 'clip' },
          ...{ localTime: '2026-03-11T08:00', zone: 'UTC', dueAt: at('2026-03-11T08:00:00Z') },
          ...{ status: 'sent', sentAt: at('2026-03-11T08:00:00Z') },
        },
      });
    });
    const stuck = async () =>
      (
        await withAcademy(test.db, academyId, (tx) =>
          tx.concern.findMany({ where: { academyId, kind: 'stuck' }, orderBy: { raisedAt: 'asc' } }),
        )
      ).map(({ subjectId }) => subjectId);
    await tick(it, '2026-03-11T11:00:00Z');
    expect(await tick(it, '2026-03-14T09:00:00Z')).toBe('check-in-reminder');
    expect(await stuck()).toEqual([]);
    // Paused or gone, nobody is put before the coaches for what they do not do.
    for (const standing of ['paused', 'left', 'lapsed']) {
      await withAcademy(test.db, academyId, (tx) => tx.student.updateMany({ data: { standing } }));
      await tick(it, `2026-03-1${{ paused: 5, left: 6, lapsed: 7 }[standing]}T09:00:00Z`);
    }
    await withAcademy(test.db, academyId, (tx) => tx.student.updateMany({ data: { standing: 'paid' } }));
    await tick(it, '2026-03-18T09:00:00Z');
    expect(await stuck()).toEqual([checkInId]);
    for (let n = 0; n < 5; n += 1) {
      await createEntry(test.db, programme, {
        ...{ clean: 3, verdict: 'stay', localDate: '2026-03-18', at: at(`2026-03-18T1${n}:00:00Z`) },
      });
    }
    await tick(it, '2026-03-19T09:00:00Z');
    expect(await stuck()).toEqual([checkInId, programme.id]);
    await withAcademy(test.db, academyId, (tx) =>
      tx.concern.updateMany({ data: { status: 'closed', closedAt: world.now } }),
    );
    await tick(it, '2026-03-20T09:00:00Z');
    expect(await stuck()).toHaveLength(2);
  });

  it('of ten workers at once is set going once', async () => {
    const it = await onTrial();
    await tick(it, '2026-03-10T11:00:00Z');
    world.now = at('2026-03-13T08:00:00Z');
    const runs = await Promise.all(Array.from({ length: 10 }, () => lookAfterStudent(it)));
    expect(runs.filter(({ nudge }) => nudge !== null)).toHaveLength(1);
  });
});
