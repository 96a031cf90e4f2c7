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
import { addClip } from '../submissions/add-clip.ts';
import { readSubmission } from '../submissions/read-submission.ts';
import { beginPreparing } from './begin-preparing.ts';
import { eraseClip } from './erase-clip.ts';
import { expireClip } from './expire-clip.ts';
import { finishClip } from './finish-clip.ts';
import { finishPreparing, type Outcome } from './finish-preparing.ts';
import { clipKeys, originalKey } from './keys.ts';
import { noteArrived } from './note-arrived.ts';
import { readClipForMedia } from './read-clip-for-media.ts';
import { readUpload } from './read-upload.ts';
import { reportPercent } from './report-percent.ts';
import { academyBytesAtMost, clipBytesAtMost, startClip, unfinishedAtMost } from './start-clip.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const file = { fileName: 'swing.mov', view: 'face-on', swingLength: 'full', lengthBytes: 1_000 } as const;
const ready = {
  kind: 'ready',
  widthPx: 1080,
  heightPx: 1920,
  frames: 240,
  fps: 120,
  durationMs: 2_000,
  sha256: 'ab'.repeat(32),
  suggestion: {
    impact: { frame: 120, impactMs: 1_000, uMs: 6, uFrames: 1, confidence: 'likely', others: 0 },
    window: { first: 90, last: 150 },
    strip: [90, 120, 150],
  },
} satisfies Outcome;
const events = (academyId: string) =>
  withAcademy(test.db, academyId, async (tx) =>
    (await tx.outbox.findMany({ where: { academyId } })).map(({ kind }) => kind),
  );

/** A submission that waits for so many clips to be prepared. */
const preparing = async (count: number) => {
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId, status: 'preparing' });
  const clips = [];
  for (let made = 0; made < count; made += 1) {
    clips.push(
      await createClip(test.db, { academyId, studentId, submissionId: id, status: 'uploaded', fence: 0 }),
    );
  }
  return { student, clips, id, ctx: actingStudent(world, student), system: world.contextOf(academyId) };
};

describe('an upload', () => {
  it('has a limit in size and in number', async () => {
    const ctx = actingStudent(world, await createStudent(test.db));
    const tooLarge = { ...file, lengthBytes: clipBytesAtMost + 1 };
    await expect(startClip({ ctx, input: tooLarge })).rejects.toMatchObject({ code: 'too-large' });
    const tried = await Promise.allSettled(
      Array.from({ length: unfinishedAtMost + 3 }, () => startClip({ ctx, input: file })),
    );
    expect(tried.filter(({ status }) => status === 'fulfilled')).toHaveLength(unfinishedAtMost);
  });

  it('is of students who have consent', async () => {
    const junior = await createStudent(test.db, { ageGroup: 'junior' });
    await expect(startClip({ ctx: actingStudent(world, junior), input: file })).rejects.toMatchObject({
      code: 'consent-missing',
    });
    const coach = actingStaff(world, await createMembership(test.db));
    await expect(startClip({ ctx: coach, input: file })).rejects.toMatchObject({ code: 'not-allowed' });
  });

  it('is finished once, however often it is said', async () => {
    const ctx = actingStudent(world, await createStudent(test.db));
    const { id } = await startClip({ ctx, input: file });
    const said = await Promise.all([1, 2, 3].map(() => finishClip({ ctx, input: { clipId: id } })));
    expect(said.map(({ status }) => status)).toEqual(['uploaded', 'uploaded', 'uploaded']);
    expect((await events(ctx.academyId)).filter((kind) => kind === 'clip.uploaded')).toHaveLength(1);
  });

  it('has room by bytes: three of the largest for a student, and so much for an academy', async () => {
    const large = { ...file, lengthBytes: clipBytesAtMost };
    const student = await createStudent(test.db);
    const ctx = actingStudent(world, student);
    const tried = await Promise.allSettled([1, 2, 3, 4, 5].map(() => startClip({ ctx, input: large })));
    expect(tried.filter(({ status }) => status === 'fulfilled')).toHaveLength(3);
    const { academyId } = student;
    const peer = await createStudent(test.db, { academyId });
    await createClip(test.db, {
      academyId,
      studentId: peer.id,
      status: 'uploading',
      lengthBytes: BigInt(academyBytesAtMost - 4 * clipBytesAtMost),
      expiresAt: new Date(factoryNow.getTime() + 1),
    });
    const others = await Promise.all([1, 2, 3].map(() => createStudent(test.db, { academyId })));
    const last = await Promise.allSettled(
      others.map((other) => startClip({ ctx: actingStudent(world, other), input: large })),
    );
    expect(last.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    const refused = last.find(({ status }) => status === 'rejected');
    expect(refused).toMatchObject({
      reason: { code: 'too-many-tries', message: expect.stringContaining('academy') },
    });
    // Another academy has its own room; and time gives this one its room back.
    await startClip({ ctx: actingStudent(world, await createStudent(test.db)), input: large });
    world.now = new Date(factoryNow.getTime() + 1);
    const again = await Promise.all(
      others.map((other) => startClip({ ctx: actingStudent(world, other), input: large })),
    );
    expect(again).toHaveLength(3);
  });

  it('is found whole by the reconciler when nobody noted its last byte', async () => {
    const ctx = actingStudent(world, await createStudent(test.db));
    const system = world.contextOf(ctx.academyId);
    const { id: clipId } = await startClip({ ctx, input: file });
    const key = originalKey({ academyId: ctx.academyId, clipId });
    world.files.set(key, new Uint8Array(file.lengthBytes - 1));
    expect(await noteArrived({ ctx: system, input: { clipId } })).toEqual({ arrived: false });
    world.files.set(key, new Uint8Array(file.lengthBytes));
    expect(await noteArrived({ ctx: system, input: { clipId } })).toEqual({ arrived: true });
    expect(await noteArrived({ ctx: system, input: { clipId } })).toEqual({ arrived: false });
    expect((await events(ctx.academyId)).filter((kind) => kind === 'clip.uploaded')).toHaveLength(1);
  });

  it('expires after two days: quota back, bytes away', async () => {
    const ctx = actingStudent(world, await createStudent(test.db));
    const system = world.contextOf(ctx.academyId);
    const { id: clipId } = await startClip({ ctx, input: file });
    const key = originalKey({ academyId: ctx.academyId, clipId });
    world.files.set(key, new Uint8Array(7));
    expect(await expireClip({ ctx: system, input: { clipId } })).toEqual({ expired: false });
    world.now = new Date(factoryNow.getTime() + 48 * 3_600_000);
    await expect(readUpload({ ctx, input: { clipId } })).rejects.toMatchObject({ code: 'not-found' });
    expect(await expireClip({ ctx: system, input: { clipId } })).toEqual({ expired: true });
    expect(world.files.has(key)).toBe(false);
    const again = Array.from({ length: unfinishedAtMost }, () => startClip({ ctx, input: file }));
    expect(await Promise.all(again)).toHaveLength(unfinishedAtMost);
    await expect(finishClip({ ctx, input: { clipId } })).rejects.toMatchObject({ code: 'clip-not-yours' });
  });
});

describe('preparing', () => {
  it('lets only the one who began last report and finish', async () => {
    const { clips, system, id, ctx } = await preparing(1);
    const clipId = clips[0]?.id ?? '';
    const slow = await beginPreparing({ ctx: system, input: { clipId } });
    const quick = await beginPreparing({ ctx: system, input: { clipId } });
    expect([slow?.fence, quick?.fence]).toEqual([1, 2]);
    const old = { clipId, fence: slow?.fence ?? 0 };
    expect(await reportPercent({ ctx: system, input: { ...old, percent: 50 } })).toEqual({ current: false });
    expect(await finishPreparing({ ctx: system, input: { ...old, outcome: ready } })).toEqual({
      done: false,
    });
    const now = { clipId, fence: quick?.fence ?? 0 };
    expect(await reportPercent({ ctx: system, input: { ...now, percent: 50 } })).toEqual({ current: true });
    expect(await finishPreparing({ ctx: system, input: { ...now, outcome: ready } })).toEqual({ done: true });
    expect(await finishPreparing({ ctx: system, input: { ...now, outcome: ready } })).toEqual({
      done: false,
    });
    const sent = await readSubmission({ ctx, input: { id } });
    expect(sent.status).toBe('waiting');
    expect(sent.clips[0]?.suggestion).toEqual(ready.suggestion);
    expect(sent.clips[0]?.media?.strip).toBe(`/media/clips/${clipId}/strip.jpg`);
    expect((await events(ctx.academyId)).filter((kind) => kind === 'clip.prepared')).toHaveLength(1);
    expect(await beginPreparing({ ctx: system, input: { clipId } })).toBeNull();
  });

  it('of two clips at once leaves none behind: the swing waits for coaches', async () => {
    const { clips, system, id, ctx } = await preparing(2);
    const begun = await Promise.all(
      clips.map(({ id: clipId }) => beginPreparing({ ctx: system, input: { clipId } })),
    );
    await Promise.all(
      clips.map(({ id: clipId }, at) =>
        finishPreparing({ ctx: system, input: { clipId, fence: begun[at]?.fence ?? 0, outcome: ready } }),
      ),
    );
    expect((await readSubmission({ ctx, input: { id } })).status).toBe('waiting');
  });

  it('that refuses a clip asks for another one, which puts the swing right', async () => {
    const { clips, system, id, ctx, student } = await preparing(1);
    const clipId = clips[0]?.id ?? '';
    const begun = await beginPreparing({ ctx: system, input: { clipId } });
    const outcome = { kind: 'refused', refusal: 'not_video' } as const;
    await finishPreparing({ ctx: system, input: { clipId, fence: begun?.fence ?? 0, outcome } });
    const asked = await readSubmission({ ctx, input: { id } });
    expect(asked.status).toBe('needs-clip');
    expect(asked.clips[0]?.refusal?.words).toMatch(/not a video/);
    const { academyId, id: studentId } = student;
    const next = await createClip(test.db, { academyId, studentId });
    const right = await addClip({ ctx, input: { id, clipId: next.id } });
    expect(right.status).toBe('waiting');
    expect(right.clips.map((clip) => clip.id)).toEqual([next.id]);
    await expect(addClip({ ctx, input: { id, clipId } })).rejects.toMatchObject({ code: 'wrong-state' });
  });
});

describe('media', () => {
  it('is for the student it belongs to and the staff of the academy, once ready', async () => {
    const student = await createStudent(test.db);
    const { academyId, id: studentId } = student;
    const clip = await createClip(test.db, { academyId, studentId });
    const input = { clipId: clip.id, file: 'poster.jpg' } as const;
    const found = { key: `${academyId}/clips/${clip.id}/poster.jpg`, type: 'image/jpeg' };
    expect(await readClipForMedia({ ctx: actingStudent(world, student), input })).toEqual(found);
    const coach = await createMembership(test.db, { academyId });
    expect(await readClipForMedia({ ctx: actingStaff(world, coach), input })).toEqual(found);
    const peer = await createStudent(test.db, { academyId });
    const stranger = await createMembership(test.db);
    for (const ctx of [actingStudent(world, peer), actingStaff(world, stranger)]) {
      await expect(readClipForMedia({ ctx, input })).rejects.toMatchObject({ code: 'not-found' });
    }
    const raw = await createClip(test.db, { academyId, studentId, status: 'uploaded' });
    await expect(
      readClipForMedia({ ctx: actingStudent(world, student), input: { ...input, clipId: raw.id } }),
    ).rejects.toMatchObject({ code: 'not-found' });
  });
});

describe('a clip whose consent was withdrawn', () => {
  const closed = async (given: Parameters<typeof createClip>[1] = {}) => {
    const student = await createStudent(test.db);
    const { academyId, id: studentId } = student;
    const erasing = { status: 'erased', eraseAt: factoryNow, ...given };
    const clip = await createClip(test.db, { academyId, studentId, ...erasing });
    const of = { academyId, clipId: clip.id };
    for (const key of clipKeys(of)) world.files.set(key, new Uint8Array(3));
    const row = () =>
      withAcademy(test.db, academyId, (tx) =>
        tx.clip.findUniqueOrThrow({ where: { academyId_id: { academyId, id: clip.id } } }),
      );
    return { student, academyId, clip, row, system: world.contextOf(academyId), input: { clipId: clip.id } };
  };
  const audited = (academyId: string) =>
    withAcademy(test.db, academyId, (tx) => tx.auditEntry.count({ where: { action: 'erase-clip' } }));

  it('is closed for everybody, with words', async () => {
    const { student, academyId, clip } = await closed();
    const coach = await createMembership(test.db, { academyId });
    const manager = await createMembership(test.db, { academyId, role: 'manager' });
    const input = { clipId: clip.id, file: 'rendition.mp4' } as const;
    for (const ctx of [
      actingStudent(world, student),
      actingStaff(world, coach),
      actingStaff(world, manager),
    ]) {
      await expect(readClipForMedia({ ctx, input })).rejects.toMatchObject({
        code: 'consent-missing',
        message: expect.stringContaining('withdrawn'),
      });
    }
    const stranger = await createMembership(test.db);
    await expect(readClipForMedia({ ctx: actingStaff(world, stranger), input })).rejects.toMatchObject({
      code: 'not-found',
    });
  });

  it('loses every file once, however often it is done', async () => {
    const { academyId, system, input, row } = await closed();
    const ran = await Promise.all([1, 2, 3].map(() => eraseClip({ ctx: system, input })));
    expect(ran.filter(({ erased }) => erased)).toHaveLength(1);
    expect([...world.files.keys()]).toEqual([]);
    expect(await row()).toMatchObject({ erasedAt: factoryNow, fileName: 'removed', sha256: null });
    expect(await audited(academyId)).toBe(1);
  });

  it('is swept again while a process may still be writing', async () => {
    const { academyId, system, input, row, clip } = await closed({ startedAt: factoryNow });
    expect(await eraseClip({ ctx: system, input })).toEqual({ erased: false });
    world.files.set(clipKeys({ academyId, clipId: clip.id })[1] ?? '', new Uint8Array(3));
    world.now = new Date(factoryNow.getTime() + 10 * 60_000);
    expect(await eraseClip({ ctx: system, input })).toEqual({ erased: true });
    expect([...world.files.keys()]).toEqual([]);
    expect((await row()).erasedAt).toEqual(world.now);
  });

  it('is not touched where consent stands, and takes nothing that preparing brings late', async () => {
    const { system, input } = await closed({ status: 'ready', eraseAt: null });
    expect(await eraseClip({ ctx: system, input })).toEqual({ erased: false });
    expect(world.files.size).toBeGreaterThan(0);
    const { clips, system: other, student } = await preparing(1);
    const clipId = clips[0]?.id ?? '';
    const begun = await beginPreparing({ ctx: other, input: { clipId } });
    await withAcademy(test.db, student.academyId, (tx) =>
      tx.clip.updateMany({ where: { id: clipId }, data: { status: 'erased', eraseAt: factoryNow } }),
    );
    const late = { clipId, fence: begun?.fence ?? 0, outcome: ready };
    expect(await finishPreparing({ ctx: other, input: late })).toEqual({ done: false });
    expect(await beginPreparing({ ctx: other, input: { clipId } })).toBeNull();
  });
});
