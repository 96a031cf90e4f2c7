import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStudent } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { readThenAndNow } from './read-then-and-now.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

it('shows the first swing that is marked at the same moment beside this one', async () => {
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const coach = await createMembership(test.db, { academyId });
  const swingOf = async (day: number, frame: number | null) => {
    const sentAt = new Date(factoryNow.getTime() + day * 86_400_000);
    const { id: submissionId } = await createSubmission(test.db, { academyId, studentId, sentAt });
    const ready = { status: 'ready', widthPx: 720, heightPx: 1280, frames: 200, fps: 100, durationMs: 2000 };
    const clip = await createClip(test.db, { academyId, studentId, submissionId, ...ready, sha256: 'x' });
    if (frame !== null) {
      await withAcademy(test.db, academyId, (tx) =>
        tx.mark.create({
          data: {
            ...{ academyId, clipId: clip.id, position: 'impact', point: 'ball', frame, x: 1, y: 1 },
            ...{ source: 'coach', byMembership: coach.id, at: factoryNow },
          },
        }),
      );
    }
    return submissionId;
  };
  const unmarked = await swingOf(0, null);
  const first = await swingOf(1, 120);
  await swingOf(2, 130);
  const latest = await swingOf(3, 150);
  const ctx = actingStudent(world, student);
  const { pair } = await readThenAndNow({ ctx, input: { id: latest } });
  expect(pair).toMatchObject({
    moment: 'impact',
    first: { submissionId: first, picture: { timeS: 1.2 } },
    latest: { submissionId: latest, picture: { timeS: 1.5 } },
  });
  expect(await readThenAndNow({ ctx, input: { id: unmarked } })).toEqual({ pair: null });
  expect(await readThenAndNow({ ctx, input: { id: first } })).toEqual({ pair: null });
});
