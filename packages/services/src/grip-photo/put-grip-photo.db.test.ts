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
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { beginPreparing } from '../clips/begin-preparing.ts';
import { eraseClip } from '../clips/erase-clip.ts';
import { finishClip } from '../clips/finish-clip.ts';
import { finishPreparing, type Outcome } from '../clips/finish-preparing.ts';
import { photoKey } from '../clips/keys.ts';
import { readClipForMedia } from '../clips/read-clip-for-media.ts';
import { startClip } from '../clips/start-clip.ts';
import type { Context } from '../context.ts';
import { putGripPhoto } from './put-grip-photo.ts';
import { readGripPhotoOfSwing } from './read-grip-photo-of-swing.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 8 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const file = { fileName: 'hands.jpg', view: 'grip-photo', swingLength: 'none', lengthBytes: 900 } as const;
const made: Outcome = { kind: 'photo', widthPx: 1536, heightPx: 2048, sha256: 'ab'.repeat(32) };

/** A student with a swing that waits, and a coach of the academy. */
const someone = async (given: Parameters<typeof createStudent>[1] = {}, status = 'waiting') => {
  const student = await createStudent(test.db, given);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId, status });
  const coach = actingStaff(world, await createMembership(test.db, { academyId }));
  return { academyId, studentId, id, ctx: actingStudent(world, student), coach };
};
const photoOf = async (ctx: Context, outcome: Outcome = made): Promise<string> => {
  const { id: clipId } = await startClip({ ctx, input: file });
  await finishClip({ ctx, input: { clipId } });
  const system = world.contextOf(ctx.academyId);
  const begun = await beginPreparing({ ctx: system, input: { clipId } });
  await finishPreparing({ ctx: system, input: { clipId, fence: begun?.fence ?? 0, outcome } });
  return clipId;
};
const put = (ctx: Context, id: string, photoId: string) => putGripPhoto({ ctx, input: { id, photoId } });
const seen = async (ctx: Context, id: string) => (await readGripPhotoOfSwing({ ctx, input: { id } })).photo;

describe('a photo of the grip after sending', () => {
  it('comes beside the swing, which its coach is told of, and said twice it counts once', async () => {
    const { academyId, ctx, coach, id } = await someone();
    const photoId = await photoOf(ctx);
    expect(await put(ctx, id, photoId)).toMatchObject({ photo: { id: photoId, submissionId: id } });
    await put(ctx, id, photoId);
    expect(await seen(coach, id)).toMatchObject({ id: photoId, status: 'ready' });
    const told = await withAcademy(test.db, academyId, (tx) =>
      tx.auditEntry.findMany({ where: { academyId, action: 'put-grip-photo' } }),
    );
    expect(told).toHaveLength(1);
  });

  it('may still be on its way, and takes the place of one that could not be used', async () => {
    const { ctx, coach, id } = await someone();
    const broken = await photoOf(ctx, { kind: 'refused', refusal: 'photo_kind' });
    await put(ctx, id, broken);
    expect((await seen(coach, id))?.refusal?.code).toBe('photo_kind');
    const { id: coming } = await startClip({ ctx, input: file });
    await put(ctx, id, coming);
    expect(await seen(coach, id)).toMatchObject({ id: coming, status: 'uploading', refusal: null });
  });

  it('closes the one before it at once and its files go', async () => {
    const { academyId, ctx, coach, id } = await someone();
    const [first, second] = [await photoOf(ctx), await photoOf(ctx)];
    await put(ctx, id, first);
    const key = photoKey({ academyId, clipId: first });
    world.files.set(key, Buffer.from('a photo'));
    await put(ctx, id, second);
    expect((await seen(ctx, id))?.id).toBe(second);
    for (const reader of [ctx, coach]) {
      const read = readClipForMedia({ ctx: reader, input: { clipId: first, file: 'photo.jpg' } });
      await expect(read).rejects.toMatchObject({ code: expect.stringMatching(/not-found|consent-missing/) });
    }
    world.now = new Date(factoryNow.getTime() + 3_600_000);
    await eraseClip({ ctx: world.contextOf(academyId), input: { clipId: first } });
    expect(world.files.has(key)).toBe(false);
  });

  it('of two at once, one stands and nothing breaks', async () => {
    const { ctx, id } = await someone();
    const ids = [await photoOf(ctx), await photoOf(ctx)];
    await Promise.all(ids.map((photoId) => put(ctx, id, photoId)));
    expect(ids).toContain((await seen(ctx, id))?.id);
  });

  it('is the student’s own photo, of no other swing, and no clip', async () => {
    const { academyId, studentId, ctx, id } = await someone();
    const peer = await someone({ academyId });
    const own = await photoOf(ctx);
    await put(ctx, id, own);
    const { id: other } = await createSubmission(test.db, { academyId, studentId });
    const { id: clip } = await createClip(test.db, { academyId, studentId });
    for (const photoId of [own, clip, await photoOf(peer.ctx)]) {
      await expect(put(ctx, other, photoId)).rejects.toMatchObject({ code: 'clip-not-yours' });
    }
    // The one that stands stays when another one cannot be had.
    await expect(put(ctx, id, clip)).rejects.toMatchObject({ code: 'clip-not-yours' });
    expect((await seen(ctx, id))?.id).toBe(own);
  });

  it.each([
    ['answered', 'already-answered'],
    ['withdrawn', 'wrong-state'],
  ])('comes too late for a swing that is %s', async (status, code) => {
    const { ctx, id } = await someone({}, status);
    const photoId = await photoOf(ctx);
    await expect(put(ctx, id, photoId)).rejects.toMatchObject({ code });
    expect(await seen(ctx, id)).toBeNull();
  });
});
