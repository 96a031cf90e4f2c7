import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { painSentence } from '@ballfirst/library/cautions';
import {
  createAcademy,
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
import { tellClipRefused } from './tell-clip-refused.ts';
import { tellFilmAgain } from './tell-film-again.ts';
import { tellPainHeld } from './tell-pain-held.ts';
import { tellPainReported } from './tell-pain-reported.ts';
import { tellReplySent } from './tell-reply-sent.ts';
import { tellStanding } from './tell-standing.ts';
import { tellWelcome } from './tell-welcome.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const guardian = {
  guardianName: 'Cy Ash',
  guardianEmail: 'cy@example.test',
  relation: 'parent',
  textVersion: '2026-1',
  purposes: { coaching: true },
  at: factoryNow.toISOString(),
  withdrawnAt: null,
};
const secret = 'sharp pain in the left wrist since Tuesday';

const mailOf = (academyId: string) =>
  withAcademy(test.db, academyId, (tx) => tx.mail.findMany({ where: { academyId } }));

const answered = async () => {
  const student = await createStudent(test.db);
  const programme = await createProgramme(test.db, { academyId: student.academyId, studentId: student.id });
  const reply = await createReply(test.db, programme);
  const ctx = world.contextOf(student.academyId);
  return { student, programme, reply, ctx, input: { eventId: newId(), replyId: reply.id } };
};

describe('a letter', () => {
  it('leaves once, of ten runs at the same time', async () => {
    const { ctx, input, student } = await answered();
    const told = await Promise.all(Array.from({ length: 10 }, () => tellReplySent({ ctx, input })));
    expect(told.reduce((sum, { sent }) => sum + sent, 0)).toBe(1);
    expect(world.sendings).toHaveLength(1);
    const [letter] = world.sendings;
    expect(letter?.messageId).toBe(`<reply-sent.${input.eventId}@lessons.example.test>`);
    expect(letter?.from.address).toBe('lessons@lessons.example.test');
    expect(letter?.text).toContain(`https://lessons.example.test/replies/${input.replyId}`);
    expect(letter?.text).not.toContain('Words for the page only');
    expect(letter?.text).toContain(painSentence);
    const rows = await mailOf(student.academyId);
    expect(rows).toMatchObject([{ toMembership: student.membershipId, kind: 'reply-sent' }]);
  });

  it('that the mail server refused leaves nothing behind and is sent at the next run', async () => {
    const { ctx, input, student } = await answered();
    world.beforeSending = () => {
      throw new Error('451 try again later');
    };
    await expect(tellReplySent({ ctx, input })).rejects.toThrow('451');
    expect(await mailOf(student.academyId)).toEqual([]);
    world.beforeSending = () => undefined;
    expect(await tellReplySent({ ctx, input })).toEqual({ sent: 1 });
    expect(await tellReplySent({ ctx, input })).toEqual({ sent: 0 });
  });

  it('that left before a crash is the same letter when it leaves again', async () => {
    const { ctx, input, student } = await answered();
    const { mailer } = ctx.resources;
    const cutOff = {
      send: async (letter: Parameters<typeof mailer.send>[0]) => {
        await mailer.send(letter);
        throw new Error('the process ended before the commit');
      },
    };
    const crashing = { ...ctx, resources: { ...ctx.resources, mailer: cutOff } };
    await expect(tellReplySent({ ctx: crashing, input })).rejects.toThrow('before the commit');
    await tellReplySent({ ctx, input });
    expect(world.sendings).toHaveLength(2);
    expect(world.letters.size).toBe(1);
    expect(await mailOf(student.academyId)).toHaveLength(1);
  });

  it('is copied to the guardian of a junior, and only there', async () => {
    const { academyId } = await createMembership(test.db);
    const adult = await createStudent(test.db, { academyId });
    const junior = await createStudent(test.db, { academyId, ageGroup: 'junior', consent: guardian });
    const ctx = world.contextOf(academyId);
    expect(await tellWelcome({ ctx, input: { eventId: newId(), studentId: adult.id } })).toEqual({ sent: 1 });
    expect(await tellWelcome({ ctx, input: { eventId: newId(), studentId: junior.id } })).toEqual({
      sent: 2,
    });
    const copies = world.sendings.filter(({ to }) => to.address === 'cy@example.test');
    expect(copies).toHaveLength(1);
    expect(copies[0]?.text).toContain('Hello Cy Ash');
    expect(copies[0]?.text).toContain('the manager');
    expect((await mailOf(academyId)).map(({ kind }) => kind).sort()).toEqual(
      ['welcome', 'welcome.guardian', 'welcome'].sort(),
    );
  });

  it('to a guardian that fails keeps the junior’s back, then both leave once', async () => {
    const student = await createStudent(test.db, { ageGroup: 'junior', consent: guardian });
    const ctx = world.contextOf(student.academyId);
    const input = { eventId: newId(), studentId: student.id };
    world.beforeSending = ({ to }) => {
      if (to.address === 'cy@example.test') throw new Error('550 no such mailbox');
    };
    await expect(tellWelcome({ ctx, input })).rejects.toThrow('550');
    expect(world.sendings).toEqual([]);
    world.beforeSending = () => undefined;
    expect(await tellWelcome({ ctx, input })).toEqual({ sent: 2 });
  });

  it('goes to nobody whose membership has ended', async () => {
    const { academyId, id: membershipId } = await createMembership(test.db, {
      role: 'student',
      endedAt: factoryNow,
    });
    const { id: studentId } = await createStudent(test.db, { academyId, membershipId });
    const ctx = world.contextOf(academyId);
    expect(await tellWelcome({ ctx, input: { eventId: newId(), studentId } })).toEqual({ sent: 0 });
  });
});

describe('a pain', () => {
  const setting = async () => {
    const { id: academyId } = await createAcademy(test.db);
    const coach = await createMembership(test.db, { academyId });
    const manager = await createMembership(test.db, { academyId, role: 'manager' });
    await createMembership(test.db, { academyId, endedAt: factoryNow });
    const student = await createStudent(test.db, { academyId, goal: secret });
    const { id: submissionId } = await createSubmission(test.db, {
      academyId,
      studentId: student.id,
      pain: 'new',
      painNote: secret,
      note: secret,
    });
    const staff = [coach.email, manager.email].sort();
    return { academyId, student, submissionId, staff, ctx: world.contextOf(academyId) };
  };
  const readers = (): string[] => world.sendings.map(({ to }) => to.address).sort();
  const everything = (): string => JSON.stringify(world.sendings);

  it('that came with a swing is told to coaches and managers once, without what was told', async () => {
    const { ctx, submissionId, staff, academyId } = await setting();
    const input = { eventId: newId(), submissionId };
    await Promise.all(Array.from({ length: 10 }, () => tellPainReported({ ctx, input })));
    expect(readers()).toEqual(staff);
    for (const word of ['wrist', 'sharp', 'Tuesday']) expect(everything()).not.toContain(word);
    expect(JSON.stringify(await mailOf(academyId))).not.toContain('wrist');
  });

  it('in practice is told with the hold; one with a swing is not told twice', async () => {
    const { ctx, academyId, student, staff, submissionId } = await setting();
    const given = { academyId, studentId: student.id, submissionId, status: 'held' };
    const held = await createProgramme(test.db, { ...given, holdReason: 'pain-in-practice' });
    const input = { eventId: newId(), programmeId: held.id };
    expect(await tellPainHeld({ ctx, input })).toEqual({ sent: 2 });
    expect(readers()).toEqual(staff);
    expect(everything()).toContain('on hold');
    expect(everything()).not.toContain('wrist');
    await withAcademy(test.db, academyId, (tx) =>
      tx.programme.updateMany({ where: { academyId }, data: { holdReason: 'pain-with-swing' } }),
    );
    expect(await tellPainHeld({ ctx, input: { ...input, eventId: newId() } })).toEqual({ sent: 0 });
  });

  it('is told to the others when one mailbox fails, and to that one later', async () => {
    const { ctx, submissionId, staff } = await setting();
    const input = { eventId: newId(), submissionId };
    world.beforeSending = ({ to }) => {
      if (to.address === staff[0]) throw new Error('550 no such mailbox');
    };
    await expect(tellPainReported({ ctx, input })).rejects.toThrow('1 letters did not leave');
    expect(readers()).toEqual(staff.slice(1));
    world.beforeSending = () => undefined;
    expect(await tellPainReported({ ctx, input })).toEqual({ sent: 1 });
  });

  it('that was none is told to nobody', async () => {
    const { academyId, id: submissionId } = await createSubmission(test.db);
    await createMembership(test.db, { academyId });
    const ctx = world.contextOf(academyId);
    expect(await tellPainReported({ ctx, input: { eventId: newId(), submissionId } })).toEqual({ sent: 0 });
  });
});

describe('a clip', () => {
  it('that was refused is told in plain words; one that is ready is not', async () => {
    const ready = await createClip(test.db);
    const refused = await createClip(test.db, {
      academyId: ready.academyId,
      studentId: ready.studentId,
      status: 'refused',
      refusal: 'no_video',
    });
    const ctx = world.contextOf(ready.academyId);
    const tell = (clipId: string) => tellClipRefused({ ctx, input: { eventId: newId(), clipId } });
    expect(await tell(ready.id)).toEqual({ sent: 0 });
    expect(await tell(refused.id)).toEqual({ sent: 1 });
    expect(world.sendings[0]?.text).toContain('sound but no picture');
    expect(world.sendings[0]?.text).not.toContain('no_video');
  });

  it('that the coach cannot judge is asked for again with the reason', async () => {
    const { academyId, id, studentId } = await createSubmission(test.db, { status: 'film-again' });
    await createClip(test.db, { academyId, studentId, submissionId: id, refusal: 'too-dark' });
    const ctx = world.contextOf(academyId);
    expect(await tellFilmAgain({ ctx, input: { eventId: newId(), submissionId: id } })).toEqual({ sent: 1 });
    expect(world.sendings[0]?.text).toContain('too dark');
    expect(world.sendings[0]?.text).toContain(`/send?for=${id}`);
  });
});

describe('a standing', () => {
  it('that became paid brings thanks; one that changed again meanwhile brings nothing', async () => {
    const { academyId, id: studentId } = await createStudent(test.db, { standing: 'paid' });
    const ctx = world.contextOf(academyId);
    const tell = (to: 'paid' | 'lapsed' | 'paused') =>
      tellStanding({ ctx, input: { eventId: newId(), studentId, to } });
    expect(await tell('paid')).toEqual({ sent: 1 });
    expect(world.sendings[0]?.subject).toContain('Thank you');
    expect(await tell('lapsed')).toEqual({ sent: 0 });
    expect(await tell('paused')).toEqual({ sent: 0 });
  });
});

describe('rows of another academy', () => {
  it('are not there: nothing is told, nothing is written', async () => {
    const { reply, student, programme } = await answered();
    const clip = await createClip(test.db, { academyId: student.academyId, studentId: student.id });
    const stranger = await createMembership(test.db);
    const ctx = world.contextOf(stranger.academyId);
    const eventId = newId();
    const { submissionId } = programme;
    const tries = [
      tellReplySent({ ctx, input: { eventId, replyId: reply.id } }),
      tellWelcome({ ctx, input: { eventId, studentId: student.id } }),
      tellFilmAgain({ ctx, input: { eventId, submissionId } }),
      tellClipRefused({ ctx, input: { eventId, clipId: clip.id } }),
      tellPainHeld({ ctx, input: { eventId, programmeId: programme.id } }),
      tellPainReported({ ctx, input: { eventId, submissionId } }),
      tellStanding({ ctx, input: { eventId, studentId: student.id, to: 'paid' } }),
    ];
    for (const result of await Promise.allSettled(tries)) {
      expect(result).toMatchObject({ status: 'rejected', reason: { code: 'not-found' } });
    }
    expect(world.sendings).toEqual([]);
    expect(await mailOf(stranger.academyId)).toEqual([]);
  });
});
