import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { painSentence } from '@ballfirst/library/cautions';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { tellJoinAsked } from '../mail/tell-join-asked.ts';
import { tellQuestionAnswered } from '../mail/tell-question-answered.ts';
import { readReply } from '../practice/read-reply.ts';
import { changeStanding } from '../students/change-standing.ts';
import { answerBack } from './answer-back.ts';
import { askBack } from './ask-back.ts';
import { askToJoin } from './ask-to-join.ts';
import { readOwnTrial } from './read-own-trial.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const answered = async () => {
  const membership = await createMembership(test.db, { role: 'student', name: 'Ada' });
  const { academyId } = membership;
  const student = await createStudent(test.db, { academyId, membershipId: membership.id });
  const programme = await createProgramme(test.db, { academyId, studentId: student.id });
  const reply = await createReply(test.db, programme);
  const coach = await createMembership(test.db, { academyId, role: 'coach', name: 'Bo' });
  // The factory's student acts under the membership's id.
  const own = { ...actingStudent(world, student) };
  return { academyId, student, reply, own, coach: actingStaff(world, coach) };
};
const waiting = (academyId: string) =>
  withAcademy(test.db, academyId, (tx) =>
    tx.concern.findMany({ where: { academyId, kind: 'question', status: 'waiting' } }),
  );

describe('asking back', () => {
  it('stands in the inbox once a reply, and an answer closes it with one letter', async () => {
    const { academyId, reply, own, coach } = await answered();
    const id = reply.id;
    await askBack({ ctx: own, input: { id, words: 'Ball further back?' } });
    await askBack({ ctx: own, input: { id, words: 'Or the hands?' } });
    expect(await waiting(academyId)).toMatchObject([{ words: 'Ball further back?', subjectId: id }]);
    const { thread } = await answerBack({ ctx: coach, input: { id, words: 'The hands first.' } });
    expect(thread.map(({ voice, name }) => [voice, name])).toEqual([
      ['student', 'Ada'],
      ['student', 'Ada'],
      ['coach', 'Bo'],
    ]);
    expect(await waiting(academyId)).toEqual([]);
    expect((await readReply({ ctx: own, input: { id } })).thread).toEqual(thread);

    const tell = () =>
      tellQuestionAnswered({
        ctx: world.contextOf(academyId),
        input: { eventId: reply.id, questionId: thread.at(-1)?.id ?? '' },
      });
    await Promise.all([tell(), tell()]);
    expect(world.sendings).toHaveLength(1);
    expect(world.sendings[0]?.text).toContain(painSentence);
    expect(world.sendings[0]?.text).not.toContain('The hands first.');
  });

  it('waits for the coach after three lines, and is short', async () => {
    const { reply, own, coach } = await answered();
    const ask = () => askBack({ ctx: own, input: { id: reply.id, words: 'And?' } });
    for (let round = 0; round < 5; round += 1) {
      for (let line = 0; line < 3; line += 1) await ask();
      await expect(ask()).rejects.toMatchObject({ code: 'thread-full' });
      await answerBack({ ctx: coach, input: { id: reply.id, words: 'So.' } });
    }
    await expect(ask()).rejects.toMatchObject({ code: 'thread-full' });
  });

  it('is for one’s own reply, and answered only where something was asked', async () => {
    const { reply, coach } = await answered();
    const other = await answered();
    await expect(askBack({ ctx: other.own, input: { id: reply.id, words: 'Hm?' } })).rejects.toMatchObject({
      code: 'not-found',
    });
    await expect(answerBack({ ctx: coach, input: { id: reply.id, words: 'Yes.' } })).rejects.toMatchObject({
      code: 'wrong-state',
    });
    await expect(
      answerBack({ ctx: other.coach, input: { id: reply.id, words: 'Yes.' } }),
    ).rejects.toMatchObject({ code: 'not-found' });
  });
});

describe('the student’s own trial', () => {
  it('shows the tally then and now, and what was done', async () => {
    const { own, academyId, student } = await answered();
    const before = await readOwnTrial({ ctx: own, input: {} });
    expect(before).toMatchObject({ replies: 1, practiceEntries: 0, latest: null, moment: null });
    expect(before.first?.tally.balls).toBeGreaterThan(0);
    await createProgramme(test.db, { academyId, studentId: student.id, status: 'replaced' });
    expect((await readOwnTrial({ ctx: own, input: {} })).latest).not.toBeNull();
  });

  it('takes the wish to join once, charges nothing, and writes to managers only', async () => {
    const { own, academyId, student } = await answered();
    const manager = await createMembership(test.db, { academyId, role: 'manager', name: 'Mo' });
    const first = await askToJoin({ ctx: own, input: {} });
    world.now = new Date(world.now.getTime() + 60_000);
    expect(await askToJoin({ ctx: own, input: {} })).toMatchObject({ joinAskedAt: first.joinAskedAt });
    expect(first.standing).toBe('trial');
    await tellJoinAsked({
      ctx: world.contextOf(academyId),
      input: { eventId: newId(), studentId: student.id },
    });
    expect(world.sendings.map(({ to }) => to.name)).toEqual(['Mo']);
    await changeStanding({
      ctx: actingStaff(world, manager),
      input: { id: student.id, to: 'paid', reason: 'asked to join' },
    });
    await expect(askToJoin({ ctx: own, input: {} })).rejects.toMatchObject({ code: 'standing-not-possible' });
    expect((await readOwnTrial({ ctx: own, input: {} })).joinAskedAt).toBeNull();
  });
});
