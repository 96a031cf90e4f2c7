import {
  createAcademy,
  createClip,
  createConcern,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createEntry, createProgramme } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newId } from '../ids.ts';
import { withAcademy } from '../with-academy.ts';
import { type InboxFilters, readInboxPage } from './inbox-page.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 1 });
});
afterAll(() => test.close());

const now = factoryNow;
const later = (hours: number): Date => new Date(now.getTime() + hours * 3_600_000);

const idsOf = async (academyId: string, filters: InboxFilters): Promise<string[]> => {
  const rows = await readInboxPage(test.db, { academyId, limit: 50, filters, now });
  return rows.map((row) => row.id);
};

describe('readInboxPage', () => {
  it('carries what the inbox shows of a waiting swing', async () => {
    const coach = await createMembership(test.db, { name: 'The coach' });
    const { academyId } = coach;
    const claim = { claimedBy: coach.id, claimedAt: now, claimExpiresAt: later(1) };
    const submission = await createSubmission(test.db, {
      academyId,
      pain: 'new',
      painNote: 'wrist',
      ...claim,
    });
    const { studentId } = submission;
    const clip = await createClip(test.db, { academyId, studentId, submissionId: submission.id });
    const [row] = await readInboxPage(test.db, { academyId, limit: 10, filters: {}, now });
    expect(row).toMatchObject({
      id: submission.id,
      kind: 'swing',
      studentId,
      studentName: 'A student',
      standing: 'trial',
      trialDay: 1,
      zone: 'UTC',
      trialEndsAt: later(14 * 24).toISOString(),
      club: '8-iron',
      view: 'face-on',
      swingLength: 'full',
      leadFault: 'fat',
      tally: submission.tally,
      pain: 'new',
      painSeenAt: null,
      reasons: [],
      answerBy: submission.answerBy.toISOString(),
      priorityKey: submission.priorityKey.toISOString(),
      claimedBy: coach.id,
      claimedByName: 'The coach',
      claimExpiresAt: later(1).toISOString(),
      handedByName: null,
      posterClipId: clip.id,
      programmeId: null,
      cause: null,
      version: 1,
    });
    const [lapsed] = await readInboxPage(test.db, { academyId, limit: 10, filters: {}, now: later(1) });
    expect(lapsed).toMatchObject({ claimedBy: null, claimedByName: null, claimExpiresAt: null });
  });

  it('pages by key and id without a gap or a repeat, equal keys included', async () => {
    const student = await createStudent(test.db);
    const { academyId } = student;
    const keys = [5, 1, 3, 3, 3, 2];
    for (const key of keys) {
      await createSubmission(test.db, { academyId, studentId: student.id, priorityKey: later(key) });
    }
    await createSubmission(test.db, {
      academyId,
      studentId: student.id,
      status: 'answered',
      answeredAt: now,
    });
    const every = await idsOf(academyId, {});
    expect(every).toHaveLength(keys.length);
    const seen: string[] = [];
    let after: { key: Date; id: string } | undefined;
    for (;;) {
      const query = { academyId, limit: 2, filters: {}, now };
      const page = await readInboxPage(test.db, after === undefined ? query : { ...query, after });
      const last = page.at(-1);
      if (last === undefined) break;
      seen.push(...page.map((row) => row.id));
      after = { key: new Date(last.priorityKey), id: last.id };
    }
    expect(seen).toEqual(every);
  });

  it('filters by fault, by claim, by kind and by name', async () => {
    const coach = await createMembership(test.db);
    const { academyId } = coach;
    const member = await createMembership(test.db, { academyId, role: 'student', name: 'Ásta Brook' });
    const student = await createStudent(test.db, { academyId, membershipId: member.id });
    const other = await createStudent(test.db, { academyId });
    const base = { academyId, studentId: student.id };
    const first = await createSubmission(test.db, { ...base, priorityKey: later(1), leadFault: 'thin' });
    const claim = { claimedBy: coach.id, claimedAt: now, claimExpiresAt: later(1) };
    const claimed = await createSubmission(test.db, { ...base, ...claim, priorityKey: later(2) });
    const pained = await createSubmission(test.db, { ...base, priorityKey: later(3), pain: 'worse' });
    const concern = await createConcern(test.db, { academyId, studentId: other.id, priorityKey: later(4) });
    expect(await idsOf(academyId, {})).toEqual([first.id, claimed.id, pained.id, concern.id]);
    expect(await idsOf(academyId, { fault: 'thin' })).toEqual([first.id]);
    expect(await idsOf(academyId, { claimedBy: coach.id })).toEqual([claimed.id]);
    expect(await idsOf(academyId, { claimedBy: 'none' })).toEqual([first.id, pained.id, concern.id]);
    expect(await idsOf(academyId, { claimedBy: 'none', fault: 'fat' })).toEqual([pained.id]);
    expect(await idsOf(academyId, { kind: 'swing' })).toEqual([first.id, claimed.id, pained.id]);
    expect(await idsOf(academyId, { kind: 'swing', fault: 'thin' })).toEqual([first.id]);
    expect(await idsOf(academyId, { kind: 'pain' })).toEqual([pained.id, concern.id]);
    expect(await idsOf(academyId, { kind: 'stuck' })).toEqual([]);
    expect(await idsOf(academyId, { search: 'ásta' })).toEqual([first.id, claimed.id, pained.id]);
    expect(await idsOf(academyId, { search: 'BROOK', fault: 'fat', claimedBy: coach.id })).toEqual([
      claimed.id,
    ]);
    expect(await idsOf(academyId, { search: 'a student' })).toEqual([concern.id]);
    expect(await idsOf(academyId, { search: '100 %_' })).toEqual([]);
  });

  it('tells the day of a trial by the calendar of its student', async () => {
    const member = await createMembership(test.db, { role: 'student', zone: 'Pacific/Auckland' });
    const { academyId } = member;
    // In Auckland it is the 10th, a quarter to one at night; in UTC still the 9th.
    const trialStartedAt = new Date('2026-03-09T11:45:00Z');
    const { id } = await createStudent(test.db, { academyId, membershipId: member.id, trialStartedAt });
    await createSubmission(test.db, { academyId, studentId: id });
    const at = async (instant: string) => {
      const [row] = await readInboxPage(test.db, {
        ...{ academyId, limit: 1, filters: {}, now: new Date(instant) },
      });
      return row?.trialDay;
    };
    expect(await at('2026-03-10T10:59:00Z')).toBe(1);
    expect(await at('2026-03-10T11:00:00Z')).toBe(2);
  });

  it('carries the last programme and how its drill went', async () => {
    const student = await createStudent(test.db);
    const base = { academyId: student.academyId, studentId: student.id };
    const done = { status: 'done', endedAt: now };
    const programme = await createProgramme(test.db, { ...base, ...done });
    await createEntry(test.db, programme, { at: later(-2), verdict: 'stay' });
    await createEntry(test.db, programme, { at: later(-1), verdict: 'passed' });
    const [row] = await readInboxPage(test.db, {
      ...{ academyId: student.academyId, limit: 1, filters: {}, now },
    });
    expect(row).toMatchObject({
      programmeId: programme.id,
      cause: 'thrown-early',
      drillId: 'flat-towel',
      programmeStatus: 'done',
      lastVerdict: 'passed',
    });
  });

  it('never shows another academy, leaves no tenant behind and refuses to change one', async () => {
    const mine = await createSubmission(test.db);
    const other = await createSubmission(test.db);
    expect(await idsOf(mine.academyId, {})).toEqual([mine.id]);
    expect(await idsOf(other.academyId, {})).toEqual([other.id]);
    const { rows } = await test.db.pool.query('SELECT id FROM submission');
    expect(rows).toEqual([]);
    const astray = withAcademy(
      test.db,
      mine.academyId,
      (tx) => tx.$queryRaw`SELECT public.enter_academy(${other.academyId}::uuid)::text`,
    );
    await expect(astray).rejects.toThrow(/works for another academy/);
  });

  it('reads one range of the partial index, whatever lies before it', async () => {
    const { id: academyId } = await createAcademy(test.db);
    const student = await createStudent(test.db, { academyId });
    await createSubmission(test.db, { academyId, studentId: student.id });
    const plan = await withAcademy(test.db, academyId, async (tx) => {
      await tx.$executeRaw`SET LOCAL enable_seqscan = off`;
      return tx.$queryRaw<{ 'QUERY PLAN': string }[]>`
        EXPLAIN SELECT id FROM submission
        WHERE academy_id = ${academyId}::uuid AND status = 'waiting'
          AND (priority_key, id) > (${now}::timestamptz, ${newId()}::uuid)
        ORDER BY priority_key, id LIMIT 50`;
    });
    const text = plan.map((line) => line['QUERY PLAN']).join('\n');
    expect(text).toContain('submission_inbox');
    expect(text).not.toContain('Sort');
    expect(text).toMatch(/Index Cond: .*ROW\(priority_key, id\)/);
  });
});
