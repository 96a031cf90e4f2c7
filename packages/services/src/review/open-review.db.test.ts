import { actingStaff } from '@ballfirst/testing/acting';
import { createMembership, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { createEntry, createProgramme } from '@ballfirst/testing/practice-factories';
import { systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openReview } from './open-review.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

it('tells what the student wants, what is practised and how it went last', async () => {
  const student = await createStudent(test.db, { goal: 'Off the mat before summer', usualMiss: 'fat' });
  const { academyId, id: studentId } = student;
  const programme = await createProgramme(test.db, { academyId, studentId });
  await createEntry(test.db, programme, { at: new Date('2026-03-08T09:00:00Z'), localDate: '2026-03-08' });
  await createEntry(test.db, programme, { clean: 9, verdict: 'passed' });
  const { id } = await createSubmission(test.db, { academyId, studentId });
  const ctx = actingStaff(
    systemWorld(test.db, factoryNow),
    await createMembership(test.db, { academyId, name: 'Ada Reed' }),
  );
  const review = await openReview({ ctx, input: { id } });
  expect(review.about).toEqual({ units: 'metric', goal: 'Off the mat before summer', usualMiss: 'fat' });
  expect(review.openProgramme).toMatchObject({
    cause: 'thrown-early',
    entries: 2,
    last: { localDate: '2026-03-10', rung: 'rehearsal', balls: 10, clean: 9, verdict: 'passed' },
  });
});
