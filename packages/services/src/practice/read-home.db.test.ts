import { withAcademy } from '@ballfirst/db/with-academy';
import { everyDrill, painHoldSentence } from '@ballfirst/library/cautions';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { markReplyRead } from './mark-reply-read.ts';
import { readHome } from './read-home.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const joined = async (given: Parameters<typeof createStudent>[1] = {}) => {
  const student = await createStudent(test.db, given);
  const { academyId, id: studentId } = student;
  return { student, of: { academyId, studentId }, ctx: actingStudent(world, student) };
};

describe('the home of a student', () => {
  it('begins with the first swing, on day one of the trial, with its price', async () => {
    const { ctx, student } = await joined();
    expect(await readHome({ ctx })).toEqual({
      next: { kind: 'send-first', words: expect.any(String), href: '/send' },
      standing: 'trial',
      trial: { day: 1, days: 14, endsAt: student.trialEndsAt?.toISOString(), priceWords: '40 a month' },
      programme: null,
      progress: null,
      latest: [],
      replies: [],
      weeks: [],
      cautions: [...everyDrill],
    });
  });

  it('tells a junior that the guardian agrees first, and to film once that is done', async () => {
    const { ctx, of } = await joined({ ageGroup: 'junior' });
    expect((await readHome({ ctx })).next).toMatchObject({ kind: 'consent-first', href: '/send' });
    await withAcademy(test.db, of.academyId, (tx) =>
      tx.student.update({
        where: { academyId_id: { academyId: of.academyId, id: of.studentId } },
        data: { consent: { withdrawnAt: null, purposes: { coaching: true } } },
      }),
    );
    expect((await readHome({ ctx })).next.kind).toBe('send-first');
  });

  it('goes from sent to answered to practising', async () => {
    const { ctx, of } = await joined();
    const swing = await createSubmission(test.db, of);
    expect((await readHome({ ctx })).next.kind).toBe('wait');
    const programme = await createProgramme(test.db, { ...of, submissionId: swing.id });
    const reply = await createReply(test.db, programme);
    const unread = await readHome({ ctx });
    expect(unread.next).toMatchObject({ kind: 'read-reply', href: `/replies/${reply.id}` });
    expect(unread.cautions).toEqual(unread.programme?.drill.cautions);
    await markReplyRead({ ctx, input: { id: reply.id } });
    expect((await readHome({ ctx })).next.kind).toBe('practise');
    await withAcademy(test.db, of.academyId, async (tx) => {
      await tx.checkIn.create({
        data: {
          ...of,
          id: reply.id,
          programmeId: programme.id,
          asks: 'clip',
          localTime: '2026-03-10T08:00',
          zone: 'UTC',
          dueAt: factoryNow,
          status: 'sent',
        },
      });
    });
    expect((await readHome({ ctx })).next).toMatchObject({
      kind: 'film-check-in',
      href: `/send?check-in=${reply.id}`,
    });
  });

  it('says why a video was refused', async () => {
    const { ctx, of } = await joined();
    const swing = await createSubmission(test.db, { ...of, status: 'needs-clip' });
    await createClip(test.db, { ...of, submissionId: swing.id, status: 'refused', refusal: 'no_video' });
    const { next } = await readHome({ ctx });
    expect(next).toMatchObject({ kind: 'put-clip-right', href: `/send?for=${swing.id}` });
    expect(next.words).toContain('no picture');
  });

  it('stops everything at a pain: a programme on hold, or a swing that told of one', async () => {
    const held = await joined();
    const programme = await createProgramme(test.db, { ...held.of, status: 'held' });
    const reply = await createReply(test.db, programme);
    expect((await readHome({ ctx: held.ctx })).next).toEqual({
      kind: 'hold',
      words: painHoldSentence,
      href: `/replies/${reply.id}`,
    });
    const told = await joined();
    const swing = await createSubmission(test.db, { ...told.of, pain: 'worse' });
    expect((await readHome({ ctx: told.ctx })).next).toEqual({
      kind: 'hold',
      words: painHoldSentence,
      href: null,
    });
    await withAcademy(test.db, told.of.academyId, (tx) =>
      tx.submission.update({
        where: { academyId_id: { academyId: told.of.academyId, id: swing.id } },
        data: { painSeenAt: factoryNow },
      }),
    );
    expect((await readHome({ ctx: told.ctx })).next.kind).toBe('wait');
  });

  it('asks nothing of a student whose trial has lapsed; replies stay', async () => {
    const { ctx, of } = await joined({ standing: 'lapsed' });
    const programme = await createProgramme(test.db, { ...of, status: 'done' });
    await createReply(test.db, programme, { readAt: factoryNow });
    const home = await readHome({ ctx });
    expect(home).toMatchObject({ trial: null, standing: 'lapsed' });
    expect(home.replies).toHaveLength(1);
    expect(home.next).toMatchObject({ kind: 'wait', href: null });
  });

  it('is for students only', async () => {
    const coach = actingStaff(world, await createMembership(test.db));
    await expect(readHome({ ctx: coach })).rejects.toMatchObject({ code: 'not-allowed' });
  });
});
