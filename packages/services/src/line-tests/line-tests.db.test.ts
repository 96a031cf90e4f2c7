import { newId } from '@ballfirst/db/ids';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { listLineTests } from './list-line-tests.ts';
import { noteLineTest } from './note-line-test.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

it('keeps where the brushes began and tells their mean with its doubt, the newest first', async () => {
  const coach = await createMembership(test.db, { name: 'Bo' });
  const { academyId } = coach;
  const student = await createStudent(test.db, { academyId, units: 'imperial' });
  const { id } = student;
  const startsMm = [-40, -25, -60, -10, -35];
  await noteLineTest({ ctx: actingStudent(world, student), input: { id, startsMm } });
  world.now = new Date(factoryNow.getTime() + 60_000);
  const told = await noteLineTest({ ctx: actingStaff(world, coach), input: { id, startsMm: [5, 10, 0] } });
  expect(told.units).toBe('imperial');
  expect(told.items).toMatchObject([
    { by: 'Bo', behind: 0, meanStartMm: 5, sdMm: 5 },
    { by: 'A student', behind: 5, meanStartMm: -34, startsMm, localDate: '2026-03-10' },
  ]);
  // Student's interval of five: mean ± 2.7764 s / sqrt 5, s = 18.507 (by hand).
  expect(told.items[1]?.lowMm).toBeCloseTo(-56.98, 1);
  expect(told.items[1]?.highMm).toBeCloseTo(-11.02, 1);
});

it('is noted once however often it is sent', async () => {
  const student = await createStudent(test.db);
  const { id } = student;
  const own = actingStudent(world, student);
  const ctx = { ...own, once: { owner: 'me', key: newId(), requestHash: 'h' } };
  await noteLineTest({ ctx, input: { id, startsMm: [1, 2, 3] } });
  await noteLineTest({ ctx, input: { id, startsMm: [1, 2, 3] } });
  expect((await listLineTests({ ctx: own, input: { id } })).items).toHaveLength(1);
});
