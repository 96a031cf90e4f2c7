import type { PracticeMeans } from '@ballfirst/contracts/http/means';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { readMeans } from './read-means.ts';
import { readStudent } from './read-student.ts';
import { saveMeans } from './save-means.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const told = {
  usualMiss: 'fat',
  daysPerWeek: 3,
  minutesPerDay: 20,
  place: 'mat',
  goal: 'Ball first with an iron',
  body: 'An old knee.',
  bodyAgreed: true,
  balls: 40,
  equipment: ['club', 'towel', 'phone'],
  pains: ['knee-pain'],
} satisfies PracticeMeans;

it('keeps what was told; the note about the body only with its permission, and gone with it', async () => {
  const ctx = actingStudent(world, await createStudent(test.db));
  expect(await readMeans({ ctx })).toMatchObject({ usualMiss: null, place: null, bodyAgreed: false });
  await expect(saveMeans({ ctx, input: { ...told, bodyAgreed: false } })).rejects.toMatchObject({
    code: 'bad-request',
  });
  expect(await saveMeans({ ctx, input: told })).toEqual(told);
  expect(await readMeans({ ctx })).toEqual(told);
  const { academyId } = ctx;
  const written = await withAcademy(test.db, academyId, (tx) =>
    tx.auditEntry.findMany({ where: { academyId } }),
  );
  expect(JSON.stringify(written)).not.toContain('knee');
  const away = { body: '', bodyAgreed: false };
  await expect(saveMeans({ ctx, input: { ...told, ...away } })).rejects.toMatchObject({
    code: 'bad-request',
  });
  const gone = await saveMeans({ ctx, input: { ...told, ...away, pains: [] } });
  expect(gone).toEqual({ ...told, body: null, bodyAgreed: false, pains: [] });
});

it('leaves balls and things at hand as they are where they are not told; pains go with the permission', async () => {
  const ctx = actingStudent(world, await createStudent(test.db));
  await saveMeans({ ctx, input: told });
  const { balls: _, equipment: __, pains: ___, ...before } = told;
  expect(await saveMeans({ ctx, input: before })).toEqual(told);
  expect(await saveMeans({ ctx, input: { ...before, body: null, bodyAgreed: false } })).toEqual({
    ...told,
    ...{ body: null, bodyAgreed: false, pains: [] },
  });
});

it('is shown to coaches; managers are told that there is a note, not what it says', async () => {
  const student = await createStudent(test.db);
  await saveMeans({ ctx: actingStudent(world, student), input: told });
  const asked = async (role: 'coach' | 'manager') => {
    const member = await createMembership(test.db, { academyId: student.academyId, role });
    return (await readStudent({ ctx: actingStaff(world, member), input: { id: student.id } })).means;
  };
  expect(await asked('coach')).toEqual(told);
  expect(await asked('manager')).toEqual({ ...told, body: null, pains: [] });
});
