import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createClip, createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { beginPreparing } from '../clips/begin-preparing.ts';
import { eraseClip } from '../clips/erase-clip.ts';
import { finishClip } from '../clips/finish-clip.ts';
import { finishPreparing, type Outcome } from '../clips/finish-preparing.ts';
import { photoKey } from '../clips/keys.ts';
import { readClipForMedia } from '../clips/read-clip-for-media.ts';
import { photoBytesAtMost, startClip, unfinishedAtMost } from '../clips/start-clip.ts';
import { endConsent } from '../consent/end-consent.ts';
import type { Context } from '../context.ts';
import { tellClipRefused } from '../mail/tell-clip-refused.ts';
import type { Input } from '../operation-types.ts';
import { openReview } from '../review/open-review.ts';
import { readClip } from '../submissions/read-clip.ts';
import { sendSubmission } from '../submissions/send-submission.ts';
import { readGripPhoto } from './read-grip-photo.ts';
import { readGripPhotoOfSwing } from './read-grip-photo-of-swing.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 6 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const photo = { fileName: 'hands.jpg', view: 'grip-photo', swingLength: 'none', lengthBytes: 900 } as const;
const made: Outcome = { kind: 'photo', widthPx: 1536, heightPx: 2048, sha256: 'cd'.repeat(32) };
const balls = { solid: 4, fat: 6, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 };
const swing = (clipIds: string[], gripPhotoId?: string | null): Input<'sendSubmission'> => ({
  ...{ clipIds, club: '8-iron', lie: 'mat', tally: { balls: 10, ...balls, counted: true } },
  ...{ startLine: 'straight', curve: 'none', typical: 'usual', note: '', pain: 'none', painNote: '' },
  checkInId: null,
  ...(gripPhotoId === undefined ? {} : { gripPhotoId }),
});

/** A student with a clip to send; another one of the same academy; a coach. */
const someone = async (given: Parameters<typeof createStudent>[1] = {}) => {
  const student = await createStudent(test.db, given);
  const { academyId, id: studentId } = student;
  const clip = await createClip(test.db, { academyId, studentId });
  const coach = actingStaff(world, await createMembership(test.db, { academyId }));
  return { academyId, studentId, clipId: clip.id, ctx: actingStudent(world, student), coach };
};
const uploaded = async (ctx: Context): Promise<string> => {
  const { id } = await startClip({ ctx, input: photo });
  await finishClip({ ctx, input: { clipId: id } });
  return id;
};
const prepared = async (ctx: Context, outcome: Outcome): Promise<string> => {
  const clipId = await uploaded(ctx);
  const system = world.contextOf(ctx.academyId);
  const begun = await beginPreparing({ ctx: system, input: { clipId } });
  expect(begun).toMatchObject({ view: 'grip-photo' });
  await finishPreparing({ ctx: system, input: { clipId, fence: begun?.fence ?? 0, outcome } });
  return clipId;
};

describe('a photo of the grip', () => {
  it('comes the way of a clip and stands beside the swing, not among its clips', async () => {
    const { ctx, coach, clipId } = await someone();
    const id = await prepared(ctx, made);
    const ready = { id, status: 'ready', refusal: null, picture: { widthPx: 1536, heightPx: 2048 } };
    const path = `/media/clips/${id}/photo.jpg`;
    expect(await readGripPhoto({ ctx, input: { id } })).toMatchObject({
      ...{ ...ready, submissionId: null, photo: path },
    });
    const sent = await sendSubmission({ ctx, input: swing([clipId], id) });
    expect(sent).toMatchObject({ status: 'waiting', clips: [{ id: clipId }] });
    for (const reader of [ctx, coach]) {
      const { photo: seen } = await readGripPhotoOfSwing({ ctx: reader, input: { id: sent.id } });
      expect(seen).toMatchObject({ ...ready, submissionId: sent.id, photo: path });
      const file = { clipId: id, file: 'photo.jpg' } as const;
      expect(await readClipForMedia({ ctx: reader, input: file })).toEqual({
        key: photoKey({ academyId: ctx.academyId, clipId: id }),
        type: 'image/jpeg',
      });
    }
    const review = await openReview({ ctx: coach, input: { id: sent.id } });
    expect(review.submission.clips.map((one) => one.id)).toEqual([clipId]);
    await expect(readClip({ ctx, input: { id } })).rejects.toMatchObject({ code: 'not-found' });
  });

  it('may still be on its way when the swing is sent, and a swing needs none', async () => {
    const { ctx, clipId } = await someone();
    const { id } = await startClip({ ctx, input: photo });
    const sent = await sendSubmission({ ctx, input: swing([clipId], id) });
    expect((await readGripPhotoOfSwing({ ctx, input: { id: sent.id } })).photo?.status).toBe('uploading');
    const other = await someone();
    const bare = await sendSubmission({ ctx: other.ctx, input: swing([other.clipId]) });
    expect(await readGripPhotoOfSwing({ ctx: other.ctx, input: { id: bare.id } })).toEqual({ photo: null });
  });

  it('is the student’s own, goes with one swing, and no clip stands in for it', async () => {
    const { academyId, studentId, ctx, clipId } = await someone();
    const peer = await someone({ academyId });
    const foreign = await someone();
    const notYours = { code: 'clip-not-yours' };
    const send = (clips: string[], photoId: string) => sendSubmission({ ctx, input: swing(clips, photoId) });
    for (const of of [peer, foreign]) {
      await expect(send([clipId], await prepared(of.ctx, made))).rejects.toMatchObject(notYours);
    }
    const id = await prepared(ctx, made);
    await expect(send([id], id)).rejects.toMatchObject(notYours);
    await expect(send([clipId], clipId)).rejects.toMatchObject(notYours);
    await send([clipId], id);
    const { id: second } = await createClip(test.db, { academyId, studentId });
    await expect(send([second], id)).rejects.toMatchObject(notYours);
    for (const of of [peer.ctx, foreign.ctx, foreign.coach]) {
      await expect(readGripPhoto({ ctx: of, input: { id } })).rejects.toMatchObject({ code: 'not-found' });
      await expect(
        readClipForMedia({ ctx: of, input: { clipId: id, file: 'photo.jpg' } }),
      ).rejects.toMatchObject({ code: 'not-found' });
    }
  });

  it('that cannot be used says why in words, writes no letter and holds nothing up', async () => {
    const { ctx, clipId, academyId } = await someone();
    const id = await prepared(ctx, { kind: 'refused', refusal: 'photo_kind' });
    const sent = await sendSubmission({ ctx, input: swing([clipId], id) });
    expect(sent.status).toBe('waiting');
    const { photo: seen } = await readGripPhotoOfSwing({ ctx, input: { id: sent.id } });
    expect(seen).toMatchObject({ status: 'refused', photo: null, refusal: { code: 'photo_kind' } });
    expect(seen?.refusal?.words).toContain('JPEG');
    const told = await tellClipRefused({
      ctx: world.contextOf(academyId),
      input: { eventId: sent.id, clipId: id },
    });
    expect(told).toEqual({ sent: 0 });
    await expect(readClipForMedia({ ctx, input: { clipId: id, file: 'photo.jpg' } })).rejects.toMatchObject({
      code: 'not-found',
    });
  });

  it('has a bound of its own and counts among what is on its way', async () => {
    const { ctx } = await someone();
    const large = { ...photo, lengthBytes: photoBytesAtMost + 1 };
    await expect(startClip({ ctx, input: large })).rejects.toMatchObject({ code: 'too-large' });
    for (let at = 0; at < unfinishedAtMost; at += 1) await startClip({ ctx, input: photo });
    await expect(startClip({ ctx, input: photo })).rejects.toMatchObject({ code: 'too-many-tries' });
  });

  it('closes at once and goes when consent is withdrawn', async () => {
    const { academyId, studentId, ctx, coach, clipId } = await someone();
    const id = await prepared(ctx, made);
    const sent = await sendSubmission({ ctx, input: swing([clipId], id) });
    const key = photoKey({ academyId, clipId: id });
    world.files.set(key, Buffer.from('a photo'));
    const system = world.contextOf(academyId);
    await withAcademy(test.db, academyId, async (tx) => {
      const asked = { guardianName: 'Cy', guardianEmail: 'cy@example.test', relation: 'parent' };
      const row = await tx.guardianConsent.create({
        data: {
          ...{ academyId, id: sent.id, studentId, ...asked, quality: false, teaching: false },
          ...{ askedAt: factoryNow, givenAt: factoryNow, textVersion: '1', evidence: 'letter' },
        },
      });
      await endConsent(tx, system, row, 'letter');
    });
    await expect(
      readClipForMedia({ ctx: coach, input: { clipId: id, file: 'photo.jpg' } }),
    ).rejects.toMatchObject({ code: 'consent-missing' });
    world.now = new Date(factoryNow.getTime() + 3_600_000);
    await eraseClip({ ctx: world.contextOf(academyId), input: { clipId: id } });
    expect(world.files.has(key)).toBe(false);
    expect((await readGripPhoto({ ctx: coach, input: { id } })).refusal?.code).toBe('photo_erased');
  });
});
