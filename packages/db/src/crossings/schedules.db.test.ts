import {
  createAcademy,
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newId } from '../ids.ts';
import { withAcademy } from '../with-academy.ts';
import { academyBySlug } from './academy-by-slug.ts';
import { dueCheckIns } from './due-check-ins.ts';
import { dueTrialEnds } from './due-trial-ends.ts';
import { expiredUploads } from './expired-uploads.ts';
import { lapsedClaims } from './lapsed-claims.ts';
import { listAcademies } from './list-academies.ts';
import { markOutboxSent } from './mark-outbox-sent.ts';
import { takeOutbox } from './take-outbox.ts';
import { unpreparedClips } from './unprepared-clips.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

const now = factoryNow;
const later = (seconds: number): Date => new Date(now.getTime() + seconds * 1000);

describe('the relay', () => {
  it('takes each event once, again when it was lost, and never when it was sent', async () => {
    const academy = await createAcademy(test.db);
    const ids = [newId(), newId(), newId()];
    await withAcademy(test.db, academy.id, (tx) =>
      tx.outbox.createMany({
        data: ids.map((id, i) => ({
          id,
          academyId: academy.id,
          kind: 'clip.uploaded',
          payload: { clipId: id },
          createdAt: later(i),
        })),
      }),
    );
    const take = { limit: 2, now: later(10), retakeAfterSeconds: 30 };
    const both = await Promise.all([takeOutbox(test.db, take), takeOutbox(test.db, take)]);
    expect(
      both
        .flat()
        .map((row) => row.id)
        .toSorted(),
    ).toEqual(ids.toSorted());
    expect(await takeOutbox(test.db, { ...take, now: later(39) })).toEqual([]);
    const sent = ids.slice(0, 1);
    expect(await markOutboxSent(test.db, { ids: sent, now: later(39) })).toBe(1);
    expect(await markOutboxSent(test.db, { ids: sent, now: later(39) })).toBe(0);
    const again = await takeOutbox(test.db, { ...take, limit: 10, now: later(40) });
    expect(again.map((row) => row.id)).toEqual(ids.slice(1));
    expect(again[0]).toMatchObject({ academyId: academy.id, kind: 'clip.uploaded', createdAt: later(1) });
  });
});

describe('what has come due', () => {
  it('finds check-ins and trial ends at their instant, in whichever academy', async () => {
    const student = await createStudent(test.db, { trialEndsAt: later(100) });
    const { academyId } = student;
    const submission = await createSubmission(test.db, { academyId, studentId: student.id });
    const programmeId = newId();
    const checkInId = newId();
    await withAcademy(test.db, academyId, async (tx) => {
      await tx.programme.create({
        data: {
          ...{ academyId, id: programmeId, studentId: student.id, submissionId: submission.id },
          ...{
            cause: 'hang-back',
            drillId: 'ball-fence',
            drillVersion: 1,
            exaggeration: 'mild',
            place: 'mat',
          },
          ...{ weeklyMinutes: 60, rung: 'rehearsal', status: 'open', createdAt: now },
        },
      });
      await tx.checkIn.create({
        data: {
          ...{ academyId, id: checkInId, studentId: student.id, programmeId, asks: 'practice' },
          ...{ localTime: '2026-03-10T10:00', zone: 'UTC', dueAt: later(50), status: 'scheduled' },
        },
      });
    });
    expect(await dueCheckIns(test.db, { now: later(49), limit: 10 })).toEqual([]);
    expect(await dueCheckIns(test.db, { now: later(50), limit: 10 })).toEqual([
      { academyId, checkInId, studentId: student.id, dueAt: later(50) },
    ]);
    expect(await dueTrialEnds(test.db, { now: later(99), limit: 10 })).toEqual([]);
    expect(await dueTrialEnds(test.db, { now: later(100), limit: 10 })).toEqual([
      { academyId, studentId: student.id, trialEndsAt: later(100) },
    ]);
  });

  it('finds lapsed claims, lost preparations and uploads given up', async () => {
    const coach = await createMembership(test.db);
    const { academyId } = coach;
    const claim = { claimedBy: coach.id, claimedAt: now, claimExpiresAt: later(60) };
    const claimed = await createSubmission(test.db, { academyId, ...claim });
    const lost = await createClip(test.db, {
      academyId,
      status: 'preparing',
      startedAt: later(10),
      fence: 3,
    });
    const open = await createClip(test.db, { academyId, status: 'uploading', expiresAt: later(30) });
    expect(await lapsedClaims(test.db, { now: later(59), limit: 10 })).toEqual([]);
    expect(await lapsedClaims(test.db, { now: later(60), limit: 10 })).toEqual([
      { academyId, submissionId: claimed.id, claimedBy: coach.id, claimExpiresAt: later(60) },
    ]);
    const old = { olderThanSeconds: 20, limit: 10 };
    expect(await unpreparedClips(test.db, { now: later(29), ...old })).toEqual([]);
    expect(await unpreparedClips(test.db, { now: later(30), ...old })).toEqual([
      { academyId, clipId: lost.id, status: 'preparing', fence: 3 },
    ]);
    expect(await expiredUploads(test.db, { now: later(29) })).toEqual([]);
    expect(await expiredUploads(test.db, { now: later(30) })).toEqual([
      { academyId, clipId: open.id, expiresAt: later(30) },
    ]);
  });
});

describe('academies', () => {
  it('shows the front of one by its slug and lists all', async () => {
    const academy = await createAcademy(test.db);
    const front = await academyBySlug(test.db, { slug: academy.slug });
    expect(front).toMatchObject({ id: academy.id, promiseHours: 24, trialStarts: 'joining', consentAge: 16 });
    expect(await academyBySlug(test.db, { slug: 'no-such-academy' })).toBeNull();
    expect((await listAcademies(test.db)).map((line) => line.id)).toContain(academy.id);
  });
});
