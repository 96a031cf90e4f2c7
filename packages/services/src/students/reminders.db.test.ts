import { actingStudent } from '@ballfirst/testing/acting';
import { createStudent, factoryNow } from '@ballfirst/testing/factories';
import { systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { chooseReminders } from './choose-reminders.ts';
import { readReminders } from './read-reminders.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

it('keeps quiet hours until they are taken away; left out, they stay', async () => {
  const world = systemWorld(test.db, factoryNow);
  const ctx = actingStudent(world, await createStudent(test.db));
  expect(await readReminders({ ctx, input: {} })).toEqual({ reminders: true, quiet: null });
  const quiet = { from: '20:00', to: '10:30' };
  await chooseReminders({ ctx, input: { reminders: true, quiet } });
  expect(await chooseReminders({ ctx, input: { reminders: false } })).toEqual({ reminders: false, quiet });
  expect(await readReminders({ ctx, input: {} })).toEqual({ reminders: false, quiet });
  await chooseReminders({ ctx, input: { reminders: true, quiet: null } });
  expect(await readReminders({ ctx, input: {} })).toEqual({ reminders: true, quiet: null });
});
