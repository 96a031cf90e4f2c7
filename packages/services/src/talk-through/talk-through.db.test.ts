import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
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
import { talkKey, talkPath } from '../clips/keys.ts';
import { claimSubmission } from '../inbox/claim-submission.ts';
import { finishReply } from '../review/finish-reply.ts';
import { saveReply } from '../review/save-reply.ts';
import { secondThoughtsMs, sendReply } from '../review/send-reply.ts';
import { captionTalkThrough } from './caption-talk-through.ts';
import { dropTalkThrough } from './drop-talk-through.ts';
import { heardTalk } from './heard-talk.ts';
import { readTalkSound } from './read-talk-sound.ts';
import { readTalkThrough } from './read-talk-through.ts';
import { saveTalkThrough } from './save-talk-through.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

/** The first bytes of a WebM file, and some more. */
const webm = Buffer.from([0x1a, 0x45, 0xdf, 0xa3, 1, 2, 3, 4]);
const step = (atMs: number, frame: number) => ({ atMs, frame, times: 1, x: 540, y: 960, point: null });
const track = [step(0, 3), { ...step(800, 12), times: 4, point: { x: 500, y: 900 } }];

/** A claimed swing with a clip, its coach and its student. */
const opened = async () => {
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId });
  const { id: clipId } = await createClip(test.db, { academyId, studentId, submissionId: id });
  const ctx = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
  await claimSubmission({ ctx, input: { id } });
  const spoken = { id, clipId, durationMs: 1500, sound: webm.toString('base64'), track, captions: [] };
  return { academyId, id, clipId, ctx, student: actingStudent(world, student), spoken };
};

it('is kept beside its clip, captioned, recorded anew and taken away again', async () => {
  const { academyId, id, clipId, ctx, spoken } = await opened();
  expect(await readTalkThrough({ ctx, input: { id } })).toEqual({ talkThrough: null });
  const first = await saveTalkThrough({ ctx, input: spoken });
  expect(first).toMatchObject({ clipId, by: 'Ada Reed', durationMs: 1500, track, sound: talkPath(first.id) });
  const key = talkKey({ academyId, clipId }, first.id);
  expect(key.startsWith(`${academyId}/clips/${clipId}/`)).toBe(true);
  expect(world.files.get(key)).toEqual(webm);

  const captions = [
    { atMs: 900, words: 'Then the hips.' },
    { atMs: 0, words: 'Look at the ball.' },
  ];
  const worded = await captionTalkThrough({ ctx, input: { id, captions } });
  expect(worded.captions.map(({ atMs }) => atMs)).toEqual([0, 900]);

  const second = await saveTalkThrough({ ctx, input: { ...spoken, durationMs: 2000 } });
  expect([...world.files.keys()]).toEqual([talkKey({ academyId, clipId }, second.id)]);
  expect(await readTalkThrough({ ctx, input: { id } })).toEqual({ talkThrough: second });
  await dropTalkThrough({ ctx, input: { id } });
  await dropTalkThrough({ ctx, input: { id } });
  expect(await readTalkThrough({ ctx, input: { id } })).toEqual({ talkThrough: null });
  expect(world.files.size).toBe(0);
});

it('refuses what is no recording, frames that the clip lacks, and another submission’s clip; nothing is left behind', async () => {
  const { id, ctx, spoken } = await opened();
  const { clipId: foreign } = await opened();
  const refused = (given: Partial<typeof spoken>) => saveTalkThrough({ ctx, input: { ...spoken, ...given } });
  await expect(refused({ sound: Buffer.from('<html>').toString('base64') })).rejects.toMatchObject({
    code: 'bad-request',
    fields: [{ path: 'sound' }],
  });
  await expect(refused({ track: [step(0, 240)] })).rejects.toMatchObject({ code: 'mark-outside-frame' });
  await expect(refused({ clipId: foreign })).rejects.toMatchObject({ code: 'not-found' });
  expect(world.files.size).toBe(0);
  const other = actingStaff(world, await createMembership(test.db, { academyId: ctx.academyId }));
  await expect(saveTalkThrough({ ctx: other, input: spoken })).rejects.toMatchObject({
    code: 'already-claimed',
  });
  expect(await readTalkThrough({ ctx, input: { id } })).toEqual({ talkThrough: null });
});

it('is heard by its student once the reply has gone out, and by no other student', async () => {
  const { academyId, id, clipId, ctx, student, spoken } = await opened();
  const talk = await saveTalkThrough({ ctx, input: spoken });
  const sound = { id: talk.id };
  expect(await readTalkSound({ ctx, input: sound })).toEqual({
    key: talkKey({ academyId, clipId }, talk.id),
    type: 'audio/webm',
  });
  await expect(readTalkSound({ ctx: student, input: sound })).rejects.toMatchObject({ code: 'not-found' });

  const draft = { words: 'So.', cause: null, setUpTicks: [], frames: [], plan: null };
  const { id: replyId } = await saveReply({ ctx, input: { id, version: 0, ...draft } });
  await sendReply({ ctx, input: { id } });
  await expect(dropTalkThrough({ ctx, input: { id } })).rejects.toMatchObject({ code: 'wrong-state' });
  world.now = new Date(world.now.getTime() + secondThoughtsMs);
  await finishReply({ ctx: world.contextOf(academyId), input: { replyId } });
  expect(await readTalkSound({ ctx: student, input: sound })).toMatchObject({ type: 'audio/webm' });
  const heard = await withAcademy(test.db, academyId, (tx) => heardTalk(tx, academyId, id));
  expect(heard).toMatchObject({
    id: talk.id,
    track,
    picture: { frames: 240 },
    media: { poster: expect.any(String) },
  });
  const fellow = actingStudent(world, await createStudent(test.db, { academyId }));
  await expect(readTalkSound({ ctx: fellow, input: sound })).rejects.toMatchObject({ code: 'not-found' });
  await expect(saveTalkThrough({ ctx, input: spoken })).rejects.toMatchObject({ code: 'already-answered' });
});
