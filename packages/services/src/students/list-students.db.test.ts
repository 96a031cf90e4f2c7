import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Context } from '../context.ts';
import { listMail } from './list-mail.ts';
import { listStudents } from './list-students.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const staffed = async () => {
  const manager = await createMembership(test.db, { role: 'manager' });
  const { academyId } = manager;
  const join = async (name: string, given: Partial<Parameters<typeof createStudent>[1]> = {}) => {
    const member = await createMembership(test.db, { academyId, role: 'student', name });
    return createStudent(test.db, { academyId, membershipId: member.id, ...given });
  };
  return { academyId, manager, ctx: actingStaff(world, manager), join };
};

const namesOf = async (ctx: Context, limit: number): Promise<string[]> => {
  const names: string[] = [];
  let after: string | null = null;
  do {
    const page: Awaited<ReturnType<typeof listStudents>> = await listStudents({
      ctx,
      input: { limit, ...(after === null ? {} : { after }) },
    });
    names.push(...page.items.map(({ name }) => name));
    after = page.next;
  } while (after !== null);
  return names;
};

describe('the table of students', () => {
  it('goes by name in pages, equal names and long ones included, each once', async () => {
    const { ctx, join } = await staffed();
    const names = ['Bo', 'Ash', 'Bo', 'Bo', 'Cy', `Dee ${'x'.repeat(300)}`];
    for (const name of names) await join(name);
    expect(await namesOf(ctx, 2)).toEqual([...names].sort());
  });

  it('shows last swing, last reply, cause and what needs a look', async () => {
    const { academyId, ctx, join } = await staffed();
    const student = await join('Ash', { ageGroup: 'junior' });
    const of = { academyId, studentId: student.id };
    const swing = await createSubmission(test.db, {
      ...of,
      status: 'answered',
      answeredAt: new Date('2026-03-10T11:00:00Z'),
    });
    const programme = await createProgramme(test.db, { ...of, submissionId: swing.id, rung: 'brush' });
    await createReply(test.db, programme, { sentAt: new Date('2026-03-10T11:00:00Z') });
    const sentAt = new Date('2026-03-10T12:00:00Z');
    await createSubmission(test.db, { ...of, pain: 'new', sentAt });
    await join('Bo', { standing: 'paid' });
    const { items } = await listStudents({ ctx, input: { limit: 50 } });
    expect(items[0]).toMatchObject({
      name: 'Ash',
      trialDay: 1,
      firstSwingAt: factoryNow.toISOString(),
      lastSwingAt: sentAt.toISOString(),
      lastReplyAt: '2026-03-10T11:00:00.000Z',
      replyHours: 2,
      cause: 'thrown-early',
      rung: 'brush',
      flags: ['waiting', 'pain', 'consent', 'unread'],
    });
    expect(items[1]).toMatchObject({ name: 'Bo', trialDay: null, flags: [], replyHours: null });
    const paid = await listStudents({ ctx, input: { limit: 50, standing: 'paid' } });
    expect(paid.items.map(({ name }) => name)).toEqual(['Bo']);
  });

  it('is not for students and holds nobody of another academy', async () => {
    const { join, ctx } = await staffed();
    const student = await join('Ash');
    await expect(
      listStudents({ ctx: actingStudent(world, student), input: { limit: 50 } }),
    ).rejects.toMatchObject({ code: 'not-allowed' });
    await createStudent(test.db);
    expect((await listStudents({ ctx, input: { limit: 50 } })).items).toHaveLength(1);
  });
});

describe('the list of mail', () => {
  it('is newest first in pages, and for managers only', async () => {
    const { academyId, ctx, manager, join } = await staffed();
    const coach = await createMembership(test.db, { academyId });
    await join('Ash');
    await withAcademy(test.db, academyId, (tx) =>
      tx.mail.createMany({
        data: [0, 1, 1, 2].map((minutes, index) => ({
          academyId,
          id: newId(),
          toMembership: manager.id,
          kind: 'welcome',
          subject: `letter ${index}`,
          textBody: 'text',
          at: new Date(factoryNow.getTime() + minutes * 60_000),
        })),
      }),
    );
    const first = await listMail({ ctx, input: { limit: 2 } });
    const second = await listMail({ ctx, input: { limit: 2, after: first.next ?? '' } });
    const subjects = [...first.items, ...second.items].map(({ subject }) => subject);
    expect(subjects[0]).toBe('letter 3');
    expect(new Set(subjects).size).toBe(4);
    expect(second.next).toBeNull();
    expect(first.items[0]?.to).toBe(`${manager.name} <${manager.email}>`);
    await expect(listMail({ ctx: actingStaff(world, coach), input: { limit: 2 } })).rejects.toMatchObject({
      code: 'not-allowed',
    });
  });
});
