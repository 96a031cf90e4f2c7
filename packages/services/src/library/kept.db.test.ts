import { withAcademy } from '@ballfirst/db/with-academy';
import { fillPhrase } from '@ballfirst/practice/fill-phrase';
import { actingStaff } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { keepStartingPoint } from './keep-starting-point.ts';
import { listPhrases } from './list-phrases.ts';
import { listStartingPoints } from './list-starting-points.ts';
import { removePhrase } from './remove-phrase.ts';
import { removeStartingPoint } from './remove-starting-point.ts';
import { savePhrase } from './save-phrase.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const kept = async (ctx: ReturnType<typeof actingStaff>) =>
  (await listPhrases({ ctx })).items.filter(({ whose }) => whose !== 'library');

describe('phrases', () => {
  it('are one’s own or the academy’s, and stand before those of the library', async () => {
    const one = await createMembership(test.db);
    const { academyId } = one;
    const ctx = actingStaff(world, one);
    const other = actingStaff(world, await createMembership(test.db, { academyId }));
    const elsewhere = actingStaff(world, await createMembership(test.db));
    const own = await savePhrase({ ctx, input: { about: 'fat', text: 'Brush, {player}.', whose: 'own' } });
    const all = await savePhrase({ ctx, input: { about: 'fat', text: 'Brush.', whose: 'academy' } });
    expect(await kept(ctx)).toEqual([own, all]);
    expect(await kept(other)).toEqual([all]);
    expect(await kept(elsewhere)).toEqual([]);
    expect((await listPhrases({ ctx })).items.at(2)?.whose).toBe('library');
    const gone = { code: 'not-found' };
    await expect(removePhrase({ ctx: other, input: { id: own.id } })).rejects.toMatchObject(gone);
    await removePhrase({ ctx: other, input: { id: all.id } });
    await removePhrase({ ctx, input: { id: own.id } });
    expect(await kept(ctx)).toEqual([]);
    await expect(removePhrase({ ctx, input: { id: own.id } })).rejects.toMatchObject(gone);
  });

  it('ask for nothing that no swing could fill in', async () => {
    const ctx = actingStaff(world, await createMembership(test.db));
    const save = (text: string) => savePhrase({ ctx, input: { about: 'x', text, whose: 'own' } });
    for (const wrong of ['Hi {nobody}.', 'Your {measured:luck}.', 'A brace { left.']) {
      await expect(save(wrong)).rejects.toMatchObject({ code: 'bad-request' });
    }
    expect((await save('{measured:hip-shift-address-top} on your {lead} side.')).whose).toBe('own');
  });
});

describe('a starting point', () => {
  const words =
    'Nora, your hips drift 6 cm away at the top. Stay on your right foot. Your drill is “Flat towel”.';

  it('keeps a sent reply for the next player with the cause, without what told of this one', async () => {
    const member = await createMembership(test.db, { role: 'student', name: 'Nora Winter' });
    const { academyId } = member;
    const student = await createStudent(test.db, { academyId, membershipId: member.id, hand: 'right' });
    const { id: submissionId } = await createSubmission(test.db, { academyId, studentId: student.id });
    const clip = await createClip(test.db, { academyId, studentId: student.id, submissionId });
    await withAcademy(test.db, academyId, async (tx) => {
      await tx.measurement.create({
        data: {
          ...{ academyId, submissionId, clipId: clip.id, key: 'hip-shift-address-top', unit: 'mm' },
          ...{ value: -61, u: 9, methodVersion: '1', at: factoryNow },
        },
      });
    });
    const programme = await createProgramme(test.db, { academyId, studentId: student.id, submissionId });
    const reply = await createReply(test.db, programme, { words, setUpTicks: ['hips'] });
    const ctx = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
    const start = await keepStartingPoint({ ctx, input: { id: reply.id } });
    expect(start).toMatchObject({ cause: programme.cause, setUpTicks: ['hips'], by: 'Ada Reed' });
    expect(start.words).toBe(
      '{player}, your hips drift {measured:hip-shift-address-top} away at the top. Stay on your {trail} foot. Your drill is “{drill}”.',
    );
    expect(JSON.stringify(start)).not.toContain('Nora');
    const next = { player: 'Per', 'measured:hip-shift-address-top': '4 cm', drill: 'Line brush' };
    expect(fillPhrase(start.words, next)).toContain('Per, your hips drift 4 cm away');
    expect((await listStartingPoints({ ctx })).items).toEqual([start]);
    const elsewhere = actingStaff(world, await createMembership(test.db));
    expect((await listStartingPoints({ ctx: elsewhere })).items).toEqual([]);
    await removeStartingPoint({ ctx, input: { id: start.id } });
    expect((await listStartingPoints({ ctx })).items).toEqual([]);
  });

  it('needs a cause to be found by', async () => {
    const student = await createStudent(test.db);
    const { academyId } = student;
    const programme = await createProgramme(test.db, { academyId, studentId: student.id });
    const reply = await createReply(test.db, programme, { cause: null });
    const ctx = actingStaff(world, await createMembership(test.db, { academyId }));
    await expect(keepStartingPoint({ ctx, input: { id: reply.id } })).rejects.toMatchObject({
      code: 'wrong-state',
    });
  });
});
