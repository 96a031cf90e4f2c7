import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
  tenBalls,
} from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { endModelSwing } from './end-model-swing.ts';
import { keepModelSwing } from './keep-model-swing.ts';
import { listComparable } from './list-comparable.ts';
import { listModelSwings } from './list-model-swings.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
  world = systemWorld(test.db, factoryNow);
});
afterAll(() => test.close());

const daysAgo = (days: number): Date => new Date(factoryNow.getTime() - days * 86_400_000);

/** A student with a swing so many days ago, each with a clip; the coach and the manager of the academy. */
const swings = async (given: readonly { days: number; solid: number; club: string; status?: string }[]) => {
  const student = await createStudent(test.db, { hand: 'left' });
  const { academyId, id: studentId } = student;
  const clips: { id: string; clipId: string }[] = [];
  for (const { days, solid, club, status = 'ready' } of given) {
    const tally = { ...tenBalls, solid, fat: 10 - solid };
    const row = { academyId, studentId, sentAt: daysAgo(days), tally, club };
    const { id } = await createSubmission(test.db, row);
    const clip = await createClip(test.db, { academyId, studentId, submissionId: id, status });
    clips.push({ id, clipId: clip.id });
  }
  const coach = actingStaff(world, await createMembership(test.db, { academyId }));
  const manager = actingStaff(world, await createMembership(test.db, { academyId, role: 'manager' }));
  return { academyId, clips, coach, manager };
};
const permitted = {
  permission: 'Allowed in writing for lessons of this academy.',
  permittedOn: '2026-03-01',
};

it('lists the earlier swings of the student with what ties them, the last and the best by name', async () => {
  const { academyId, clips, coach } = await swings([
    { days: 0, solid: 3, club: '8-iron' },
    { days: 7, solid: 5, club: 'driver' },
    { days: 14, solid: 7, club: '8-iron' },
    { days: 21, solid: 9, club: '8-iron', status: 'expired' },
  ]);
  const [now, last, best] = clips;
  const { membershipId } = coach.actor.kind === 'person' ? coach.actor : { membershipId: '' };
  await withAcademy(test.db, academyId, (tx) =>
    tx.mark.create({
      data: {
        ...{
          academyId,
          clipId: last?.clipId ?? '',
          position: 'impact',
          point: 'ball',
          frame: 90,
          x: 1,
          y: 2,
        },
        ...{ source: 'coach', byMembership: membershipId, at: factoryNow },
      },
    }),
  );
  const { items } = await listComparable({ ctx: coach, input: { id: now?.id ?? '' } });
  expect(items.map((it) => [it.clip.id, it.last, it.best, it.club, it.hand])).toEqual([
    [last?.clipId, true, false, 'driver', 'left'],
    [best?.clipId, false, true, '8-iron', 'left'],
  ]);
  expect(items[0]?.marks).toEqual([
    { position: 'impact', point: 'ball', frame: 90, x: 1, y: 2, source: 'coach' },
  ]);
  // What came later is none that the student has been taught by yet.
  expect((await listComparable({ ctx: coach, input: { id: best?.id ?? '' } })).items).toEqual([]);
});

it('keeps a model swing with the permission of its player, until it is taken out', async () => {
  const { clips, coach, manager, academyId } = await swings([{ days: 3, solid: 9, club: '7-iron' }]);
  const other = await createSubmission(test.db, { academyId });
  const id = clips[0]?.clipId ?? '';
  const kept = await keepModelSwing({ ctx: manager, input: { id, name: 'Weight ahead', ...permitted } });
  expect(kept).toMatchObject({ clipId: id, name: 'Weight ahead', player: 'A student', ...permitted });
  expect((await listModelSwings({ ctx: coach, input: {} })).items).toEqual([kept]);
  const beside = await listComparable({ ctx: coach, input: { id: other.id } });
  expect(beside.items).toMatchObject([{ from: 'collection', name: 'Weight ahead', clip: { id } }]);

  await expect(
    keepModelSwing({ ctx: manager, input: { id, name: 'Again', ...permitted } }),
  ).rejects.toMatchObject({ code: 'wrong-state' });
  await expect(
    keepModelSwing({ ctx: coach, input: { id, name: 'By a coach', ...permitted } }),
  ).rejects.toMatchObject({ code: 'not-allowed' });

  await endModelSwing({ ctx: manager, input: { id } });
  await endModelSwing({ ctx: manager, input: { id } });
  expect((await listModelSwings({ ctx: coach, input: {} })).items).toEqual([]);
  expect((await listComparable({ ctx: coach, input: { id: other.id } })).items).toEqual([]);
  const onRecord = await withAcademy(test.db, academyId, (tx) => tx.modelSwing.findMany());
  expect(onRecord).toMatchObject([{ permission: permitted.permission, endedAt: factoryNow }]);
  await keepModelSwing({ ctx: manager, input: { id, name: 'Once more', ...permitted } });
});

it('is the collection of one academy', async () => {
  const ours = await swings([{ days: 3, solid: 9, club: '7-iron' }]);
  const theirs = await swings([{ days: 3, solid: 9, club: '7-iron' }]);
  const id = ours.clips[0]?.clipId ?? '';
  await keepModelSwing({ ctx: ours.manager, input: { id, name: 'Ours', ...permitted } });
  expect((await listModelSwings({ ctx: theirs.coach, input: {} })).items).toEqual([]);
  const { items } = await listComparable({ ctx: theirs.coach, input: { id: theirs.clips[0]?.id ?? '' } });
  expect(items).toEqual([]);
});
