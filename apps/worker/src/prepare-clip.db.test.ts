import { copyFile, mkdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Prisma } from '@ballfirst/db/generated/client';
import { withAcademy } from '@ballfirst/db/with-academy';
import { blobsOnDisk } from '@ballfirst/edges/blobs-on-disk';
import {
  framesKey,
  originalKey,
  photoKey,
  posterKey,
  renditionKey,
  stripKey,
} from '@ballfirst/services/clips/keys';
import { createClip, createSubmission } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Env } from './env.ts';
import { announce } from './testing/announce.ts';
import { workerEnv } from './testing/worker-env.ts';
import { killed, startWorkerProcess } from './testing/worker-process.ts';

const keptClip = fileURLToPath(new URL('../../../packages/demo/clips/sway-away.mp4', import.meta.url));

describe('a clip and the worker that prepares it', () => {
  let database: TestDatabase;
  let env: Env;
  const workers: ReturnType<typeof startWorkerProcess>[] = [];
  const start = () => {
    const worker = startWorkerProcess(env);
    workers.push(worker);
    return worker;
  };

  beforeAll(async () => {
    database = await testDatabase();
    env = await workerEnv(database, 1);
  });
  afterAll(async () => {
    for (const worker of workers) await killed(worker, 'SIGKILL');
    await database.close();
  });

  /** A submission that waits for one clip whose bytes have arrived. */
  const arrived = async (source: string, shown: Parameters<typeof createClip>[1] = {}) => {
    const submission = await createSubmission(database.db, { status: 'preparing' });
    const { academyId, studentId } = submission;
    const clip = await createClip(database.db, {
      academyId,
      studentId,
      submissionId: submission.id,
      ...shown,
      status: 'uploaded',
      percent: 0,
      fence: 0,
      lengthBytes: BigInt((await stat(source)).size),
    });
    const target = blobsOnDisk(env.MEDIA_FOLDER).localPath(originalKey({ academyId, clipId: clip.id }));
    await mkdir(path.dirname(target), { recursive: true });
    await copyFile(source, target);
    await announce(database.db, academyId, 'clip.uploaded', { clipId: clip.id });
    const read = () =>
      withAcademy(database.db, academyId, (tx) =>
        tx.clip.findUniqueOrThrow({
          where: { academyId_id: { academyId, id: clip.id } },
          include: { submission: true },
        }),
      );
    return { academyId, clipId: clip.id, read };
  };

  it('is taken up again within a minute after kill -9 in mid-job, with one effect', async () => {
    const { academyId, clipId, read } = await arrived(keptClip);
    const first = start();
    await vi.waitFor(async () => expect((await read()).status).toBe('preparing'), {
      timeout: 90_000,
      interval: 10,
    });
    await killed(first, 'SIGKILL');
    const killedAt = Date.now();
    expect((await read()).status).toBe('preparing');

    start();
    await vi.waitFor(async () => expect((await read()).status).toBe('ready'), {
      timeout: 60_000,
      interval: 100,
    });
    expect(Date.now() - killedAt).toBeLessThan(60_000);

    const clip = await read();
    expect(clip.fence).toBe(2);
    expect(clip.frames).toBe(264);
    expect(clip.submission?.status).toBe('waiting');
    const blobs = blobsOnDisk(env.MEDIA_FOLDER);
    for (const key of [renditionKey, posterKey, framesKey, stripKey]) {
      expect(await blobs.size(key({ academyId, clipId }))).toBeGreaterThan(1000);
    }
    // The original holds the place where it was filmed.
    await vi.waitFor(async () => expect(await blobs.size(originalKey({ academyId, clipId }))).toBeNull(), {
      timeout: 30_000,
    });
    const prepared = await withAcademy(database.db, academyId, (tx) =>
      tx.auditEntry.count({ where: { academyId, action: 'prepare-clip' } }),
    );
    expect(prepared).toBe(1);
  }, 240_000);

  it('that was prepared before the machine looked is looked at, once', async () => {
    if (workers.length === 0) start();
    const { academyId, clipId, read } = await arrived(keptClip);
    await vi.waitFor(async () => expect((await read()).suggestion).not.toBeNull(), {
      timeout: 120_000,
      interval: 50,
    });
    const first = await read();
    // The golfer of this clip strikes the ball in frame 168; it is heard a frame early, within its doubt.
    expect(first.suggestion).toMatchObject({ impact: { frame: 167, uFrames: 1, confidence: 'likely' } });
    await withAcademy(database.db, academyId, (tx) =>
      tx.clip.updateMany({ where: { id: clipId }, data: { suggestion: Prisma.DbNull } }),
    );
    const blobs = blobsOnDisk(env.MEDIA_FOLDER);
    await blobs.remove(stripKey({ academyId, clipId }));
    await vi.waitFor(async () => expect((await read()).suggestion).toEqual(first.suggestion), {
      timeout: 120_000,
      interval: 50,
    });
    expect(await blobs.size(stripKey({ academyId, clipId }))).toBeGreaterThan(1000);
  }, 300_000);

  it('of the grip becomes a bare photo, and one that is none says so; neither moves the swing', async () => {
    if (workers.length === 0) start();
    const shown = { view: 'grip-photo', swingLength: 'none', submissionId: null } as const;
    const good = await arrived(keptClip.replace('.mp4', '.jpg'), shown);
    await vi.waitFor(async () => expect((await good.read()).status).toBe('ready'), {
      timeout: 60_000,
      interval: 50,
    });
    const { academyId, clipId } = good;
    const { widthPx, heightPx } = await good.read();
    expect(Math.min(widthPx ?? 0, heightPx ?? 0)).toBeGreaterThan(300);
    const blobs = blobsOnDisk(env.MEDIA_FOLDER);
    expect(await blobs.size(photoKey({ academyId, clipId }))).toBeGreaterThan(1000);
    await vi.waitFor(async () => expect(await blobs.size(originalKey({ academyId, clipId }))).toBeNull(), {
      timeout: 30_000,
    });
    const bad = await arrived(keptClip, shown);
    await vi.waitFor(async () => expect((await bad.read()).status).toBe('refused'), {
      timeout: 60_000,
      interval: 50,
    });
    expect((await bad.read()).refusal).toBe('not_photo');
    expect(await blobs.size(photoKey({ academyId: bad.academyId, clipId: bad.clipId }))).toBeNull();
  }, 120_000);

  it('is refused with words when it is no video, and the student can send another', async () => {
    const { read } = await arrived(fileURLToPath(import.meta.url));
    await vi.waitFor(async () => expect((await read()).status).toBe('refused'), {
      timeout: 30_000,
      interval: 50,
    });
    const clip = await read();
    expect(clip.refusal).toBe('not_video');
    expect(clip.submission?.status).toBe('needs-clip');
  }, 60_000);
});
