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
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readAbout } from '../about/read-about.ts';
import type { Context } from '../context.ts';
import { claimSubmission } from '../inbox/claim-submission.ts';
import type { Input } from '../operation-types.ts';
import { readReply } from '../practice/read-reply.ts';
import { sayReplyRead } from '../practice/say-reply-read.ts';
import { readTalkSound } from '../talk-through/read-talk-sound.ts';
import { saveTalkThrough } from '../talk-through/save-talk-through.ts';
import { keepTeachingClip } from '../teaching/keep-teaching-clip.ts';
import { removeTeachingClip } from '../teaching/remove-teaching-clip.ts';
import { correctReply } from './correct-reply.ts';
import { finishReply } from './finish-reply.ts';
import { openReview } from './open-review.ts';
import { saveReply } from './save-reply.ts';
import { secondThoughtsMs, sendReply } from './send-reply.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

/** A claimed swing with a clip, its coach and its student. */
const opened = async () => {
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId });
  const { id: clipId } = await createClip(test.db, { academyId, studentId, submissionId: id });
  const ctx = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
  await claimSubmission({ ctx, input: { id } });
  return { academyId, id, clipId, ctx, studentId, student: actingStudent(world, student) };
};
const film = { title: 'The hips', url: 'https://films.example/hips', words: 'How the hips go first.' };
const keep = (ctx: Context, cause = 'hang-back', title = film.title) =>
  keepTeachingClip({ ctx, input: { ...film, cause, title } });
const draft = (id: string, version: number, given: Partial<Input<'saveReply'>> = {}): Input<'saveReply'> => ({
  ...{ id, version, words: 'So.', cause: 'hang-back', setUpTicks: [], frames: [], plan: null },
  ...given,
});
const send = async (ctx: Context, id: string): Promise<string> => {
  const { id: replyId } = await sendReply({ ctx, input: { id } });
  world.now = new Date(world.now.getTime() + secondThoughtsMs);
  await finishReply({ ctx: world.contextOf(ctx.academyId), input: { replyId } });
  return replyId;
};

describe('the film that goes with a reply', () => {
  it('stays as it was put in, whatever the academy keeps later, also when the words are corrected', async () => {
    const { ctx, id, student } = await opened();
    await keep(ctx);
    const saved = await saveReply({ ctx, input: draft(id, 0, { teachingClip: 'hang-back' }) });
    expect(saved).toMatchObject({ teachingClip: { cause: 'hang-back', ...film }, withTalk: true });
    expect((await openReview({ ctx, input: { id } })).reply).toEqual(saved);
    await removeTeachingClip({ ctx, input: { cause: 'hang-back' } });
    // Its coach has seen it: the draft may be saved on.
    await saveReply({ ctx, input: draft(id, 1, { teachingClip: 'hang-back', words: 'So then.' }) });
    const replyId = await send(ctx, id);
    await keep(ctx, 'hang-back', 'Another film');
    const read = await readReply({ ctx: student, input: { id: replyId } });
    expect(read.teachingClip).toEqual({ cause: 'hang-back', ...film });
    await correctReply({ ctx, input: { id: replyId, words: 'So it is.', version: read.version } });
    expect(await readReply({ ctx: student, input: { id: replyId } })).toMatchObject({
      ...{ words: 'So it is.', teachingClip: film, earlier: [{ words: 'So then.' }] },
    });
  });

  it('is put right in a reply that has gone out: another one, none, or one where none was', async () => {
    const { ctx, id, student } = await opened();
    await keep(ctx);
    await saveReply({ ctx, input: draft(id, 0) });
    const replyId = await send(ctx, id);
    const read = () => readReply({ ctx: student, input: { id: replyId } });
    const correct = async (teachingClip: string | null | undefined, words = 'So.') =>
      correctReply({ ctx, input: { id: replyId, words, teachingClip, version: (await read()).version } });
    expect(await read()).toMatchObject({ teachingClip: null, causes: ['hang-back'] });
    await correct('hang-back');
    expect(await read()).toMatchObject({
      teachingClip: film,
      earlier: [{ words: 'So.', teachingClip: null }],
    });
    // The academy keeps another one now: as long as nobody speaks of the film, or wants the same, it stays.
    await keep(ctx, 'hang-back', 'Another film');
    const { version } = await read();
    await correct('hang-back');
    expect((await read()).version).toBe(version);
    await correct(undefined, 'So it is.');
    expect(await read()).toMatchObject({ teachingClip: film, words: 'So it is.' });
    await correct(null, 'So it is.');
    expect(await read()).toMatchObject({ teachingClip: null, earlier: [{ teachingClip: film }, {}, {}] });
    await correct('hang-back', 'So it is.');
    expect((await read()).teachingClip?.title).toBe('Another film');
    const now = (await read()).version;
    await expect(correct('thrown-early')).rejects.toMatchObject({
      ...{ code: 'bad-request', fields: [{ path: 'teachingClip' }] },
    });
    expect((await read()).version).toBe(now);
  });

  it('is one of this academy, for a cause that the reply names', async () => {
    const { ctx, id } = await opened();
    const elsewhere = await opened();
    await keep(elsewhere.ctx);
    const save = (given: Partial<Input<'saveReply'>>) => saveReply({ ctx, input: draft(id, 0, given) });
    const refused = { code: 'bad-request', fields: [{ path: 'teachingClip' }] };
    await expect(save({ teachingClip: 'hang-back' })).rejects.toMatchObject(refused);
    await keep(ctx, 'thrown-early');
    await expect(save({ teachingClip: 'thrown-early' })).rejects.toMatchObject(refused);
    await expect(save({ teachingClip: 'thrown-early', cause: null })).rejects.toMatchObject(refused);
    const both = { moreCauses: ['thrown-early'], moreAgreed: true, teachingClip: 'thrown-early' };
    expect((await save(both)).teachingClip?.cause).toBe('thrown-early');
  });

  it('is read by nobody of another academy, and goes out of the draft again', async () => {
    const { ctx, id, student } = await opened();
    await keep(ctx);
    await saveReply({ ctx, input: draft(id, 0, { teachingClip: 'hang-back' }) });
    expect((await saveReply({ ctx, input: draft(id, 1) })).teachingClip).toBeNull();
    await saveReply({ ctx, input: draft(id, 2, { teachingClip: 'hang-back' }) });
    const replyId = await send(ctx, id);
    expect((await readReply({ ctx: student, input: { id: replyId } })).teachingClip?.title).toBe('The hips');
    for (const other of [(await opened()).student, (await opened()).ctx]) {
      await expect(readReply({ ctx: other, input: { id: replyId } })).rejects.toMatchObject({
        code: 'not-found',
      });
    }
  });
});

describe('a recorded talk-through', () => {
  const spoken = (id: string, clipId: string) => ({
    ...{ id, clipId, durationMs: 1500, sound: 'GkXfowECAwQ=', captions: [] },
    track: [{ atMs: 0, frame: 3, times: 1, x: 540, y: 960, point: null }],
  });

  it.each([
    ['goes with the reply where nothing else is said', undefined, true],
    ['is left out where its coach says so', false, false],
  ])('%s', async (_, withTalk, heard) => {
    const { ctx, id, clipId, student } = await opened();
    const talk = await saveTalkThrough({ ctx, input: spoken(id, clipId) });
    await saveReply({ ctx, input: draft(id, 0, withTalk === undefined ? {} : { withTalk }) });
    const replyId = await send(ctx, id);
    const read = await readReply({ ctx: student, input: { id: replyId } });
    expect(read.talkThrough?.id ?? null).toBe(heard ? talk.id : null);
    const sound = readTalkSound({ ctx: student, input: { id: talk.id } });
    if (heard) expect(await sound).toMatchObject({ type: 'audio/webm' });
    else await expect(sound).rejects.toMatchObject({ code: 'not-found' });
    // Coaches hear what was recorded, whether it went out or not.
    expect(await readTalkSound({ ctx, input: { id: talk.id } })).toMatchObject({ type: 'audio/webm' });
  });
});

describe('“I’ve read this”', () => {
  it('is said once, keeps its time, counts as opened, and coaches see it on the timeline', async () => {
    const { ctx, id, student, studentId } = await opened();
    await saveReply({ ctx, input: draft(id, 0) });
    const replyId = await send(ctx, id);
    const line = async () =>
      (await readAbout({ ctx, input: { id: studentId } })).timeline.find(({ kind }) => kind === 'reply');
    expect(await line()).toMatchObject({ read: false, saidReadAt: null });
    const at = world.now.toISOString();
    expect(await sayReplyRead({ ctx: student, input: { id: replyId } })).toEqual({ saidReadAt: at });
    world.now = new Date(world.now.getTime() + 60_000);
    expect(await sayReplyRead({ ctx: student, input: { id: replyId } })).toEqual({ saidReadAt: at });
    expect(await readReply({ ctx: student, input: { id: replyId } })).toMatchObject({
      ...{ readAt: at, saidReadAt: at },
    });
    expect(await line()).toMatchObject({ read: true, saidReadAt: at });
    await expect(sayReplyRead({ ctx, input: { id: replyId } })).rejects.toMatchObject({
      code: 'not-allowed',
    });
  });
});
