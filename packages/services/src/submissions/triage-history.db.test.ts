import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStudent } from '@ballfirst/testing/acting';
import {
  createAcademy,
  createClip,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createEntry, createProgramme } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { sendSubmission } from './send-submission.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const none = { balls: 10, solid: 4, fat: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 };
const fat = { ...none, fat: 6, counted: true };
const thin = { ...none, thin: 6, counted: true };

/** A student whose first swing, a month ago, was fat, with a programme for it. */
const practising = async (status: 'open' | 'done') => {
  const student = await createStudent(test.db, { standing: 'paid', trialStartedAt: null, trialEndsAt: null });
  const { academyId, id: studentId } = student;
  const { id: submissionId } = await createSubmission(test.db, {
    ...{ academyId, studentId, status: 'answered', tally: fat, leadFault: 'fat' },
    sentAt: new Date('2026-02-10T09:00:00Z'),
  });
  const programme = await createProgramme(test.db, { academyId, studentId, submissionId, status });
  return { student, programme };
};

/** Sends a swing and says why it stands where it does. */
const sent = async (student: Awaited<ReturnType<typeof createStudent>>, tally: typeof fat) => {
  const { academyId, id: studentId } = student;
  const clip = await createClip(test.db, { academyId, studentId, submissionId: null });
  const { id } = await sendSubmission({
    ctx: actingStudent(world, student),
    input: {
      ...{ clipIds: [clip.id], club: '8-iron', lie: 'mat', tally, startLine: 'straight', curve: 'none' },
      ...{ typical: 'usual', note: '', pain: 'none', painNote: '', checkInId: null },
    },
  });
  const row = await withAcademy(test.db, academyId, (tx) =>
    tx.submission.findUniqueOrThrow({ where: { academyId_id: { academyId, id } } }),
  );
  const reasons = row.reasons as { kind: string }[];
  return { headStartHours: row.headStartHours, kinds: reasons.map(({ kind }) => kind) };
};

describe('the place of a swing knows its student', () => {
  it('an old fault that a finished programme had mended comes forward', async () => {
    const back = await sent((await practising('done')).student, fat);
    expect(back.kinds).toContain('old-fault');
    const other = await sent((await practising('done')).student, thin);
    expect(other.kinds).not.toContain('old-fault');
    expect(back.headStartHours).toBeGreaterThan(other.headStartHours);
  });

  it('practice that stays where it is comes forward', async () => {
    const { student, programme } = await practising('open');
    expect((await sent(student, fat)).kinds).not.toContain('stuck');
    for (let day = 1; day <= 5; day += 1) {
      await createEntry(test.db, programme, {
        ...{ clean: 3, verdict: 'stay', localDate: `2026-03-0${day}` },
        at: new Date(`2026-03-0${day}T10:00:00Z`),
      });
    }
    expect((await sent(student, fat)).kinds).toContain('stuck');
  });

  it('each drill is stuck by its own entries: those of the other say nothing of its step', async () => {
    const { student, programme } = await practising('open');
    const log = (day: number, second: boolean) =>
      createEntry(test.db, programme, {
        ...{ clean: 3, verdict: 'stay', localDate: `2026-03-0${day}`, second },
        at: new Date(`2026-03-0${day}T1${second ? 1 : 0}:00:00Z`),
      });
    for (let day = 1; day <= 4; day += 1) {
      await log(day, false);
      await log(day, true);
    }
    expect((await sent(student, fat)).kinds).not.toContain('stuck');
    await log(5, true);
    expect((await sent(student, fat)).kinds).toContain('stuck');
  });

  it('the opposite miss under an open programme is progress and raises nothing', async () => {
    const { student } = await practising('open');
    const { kinds, headStartHours } = await sent(student, thin);
    expect(kinds).toContain('progress');
    expect(kinds).not.toContain('fault');
    expect(headStartHours).toBe(0);
  });

  it('says so where more is promised than can be answered', async () => {
    const { id: academyId } = await createAcademy(test.db, { promiseHours: 1 });
    const student = await createStudent(test.db, { academyId, standing: 'paid', trialEndsAt: null });
    expect((await sent(student, fat)).kinds).not.toContain('promise-at-risk');
    // One coach answers twelve an hour: common practice, no source.
    for (let waits = 0; waits < 12; waits += 1) {
      await createSubmission(test.db, {
        ...{ academyId, studentId: student.id, answerBy: new Date(factoryNow.getTime() + 60_000) },
      });
    }
    expect((await sent(student, fat)).kinds).toContain('promise-at-risk');
  });
});
