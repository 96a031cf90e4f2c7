import { copyFile, mkdir } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { withAcademy } from '@ballfirst/db/with-academy';
import { blobsOnDisk } from '@ballfirst/edges/blobs-on-disk';
import { framesKey, renditionKey } from '@ballfirst/services/clips/keys';
import { stillKey } from '@ballfirst/services/stills/still-key';
import { createClip, createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Env } from './env.ts';
import { announce } from './testing/announce.ts';
import { workerEnv } from './testing/worker-env.ts';
import { killed, startWorkerProcess } from './testing/worker-process.ts';

const keptClip = fileURLToPath(new URL('../../../packages/demo/clips/sway-away.mp4', import.meta.url));
const [address, top] = [36, 134];
const within = { timeout: 90_000, interval: 50 };

describe('a sent reply and the worker that draws its frames', () => {
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
    env = await workerEnv(database, 3);
  });
  afterAll(async () => {
    for (const worker of workers) await killed(worker, 'SIGKILL');
    await database.close();
  });

  const sent = async () => {
    const student = await createStudent(database.db, { ageGroup: 'junior' });
    const { academyId } = student;
    const programme = await createProgramme(database.db, { academyId, studentId: student.id });
    const clip = await createClip(database.db, {
      ...{ academyId, studentId: student.id, submissionId: programme.submissionId },
      ...{ widthPx: 720, heightPx: 1280, frames: 264, fps: 120 },
    });
    const blobs = blobsOnDisk(env.MEDIA_FOLDER);
    const target = blobs.localPath(renditionKey({ academyId, clipId: clip.id }));
    await mkdir(path.dirname(target), { recursive: true });
    await copyFile(keptClip, target);
    const timesS = Array.from({ length: 264 }, (_, frame) => frame / 120);
    await blobs.put(framesKey({ academyId, clipId: clip.id }), Buffer.from(JSON.stringify({ timesS })));
    const coach = await createMembership(database.db, { academyId });
    await withAcademy(database.db, academyId, (tx) =>
      tx.mark.createMany({
        data: [
          { position: 'address', point: 'ball', frame: address, x: 375, y: 994 },
          { position: 'top', point: 'hip-middle', frame: top, x: 328, y: 666 },
        ].map((mark) => ({
          ...{ academyId, clipId: clip.id, source: 'coach', byMembership: coach.id, at: factoryNow },
          ...mark,
        })),
      }),
    );
    const frame = (position: string, at: number) => ({ clipId: clip.id, position, frame: at, caption: 'x' });
    const reply = await createReply(database.db, programme, {
      frames: [frame('address', address), frame('top', top)],
    });
    const read = () =>
      withAcademy(database.db, academyId, (tx) =>
        tx.reply.findUniqueOrThrow({ where: { academyId_id: { academyId, id: reply.id } } }),
      );
    const still = (index: number) => blobs.size(stillKey({ academyId, replyId: reply.id }, index));
    const drawn = () =>
      withAcademy(database.db, academyId, (tx) =>
        tx.auditEntry.count({ where: { academyId, action: 'draw-reply' } }),
      );
    return { academyId, clip, reply, read, still, drawn, blobs };
  };

  it('draws them once though its event is told twice and the worker is killed in mid-job', async () => {
    const { academyId, reply, read, still, drawn } = await sent();
    await announce(database.db, academyId, 'reply.sent', { replyId: reply.id });
    await announce(database.db, academyId, 'reply.sent', { replyId: reply.id });
    const folder = path.dirname(
      blobsOnDisk(env.MEDIA_FOLDER).localPath(stillKey({ academyId, replyId: reply.id }, 0)),
    );
    const first = start();
    // The first picture lies there before the row says so.
    await vi.waitFor(async () => expect(await still(0), folder).not.toBeNull(), { ...within, interval: 5 });
    await killed(first, 'SIGKILL');
    start();
    await vi.waitFor(async () => expect((await read()).stillsVersion).toBe(1), within);
    for (const index of [0, 1]) expect(await still(index)).toBeGreaterThan(10_000);
    expect(await still(2)).toBeNull();
    expect(await drawn()).toBe(1);
  }, 240_000);

  it('draws what the queue has lost, and again after a correction', async () => {
    const { academyId, reply, read, still, drawn } = await sent();
    await vi.waitFor(async () => expect((await read()).stillsVersion).toBe(1), within);
    expect(await still(1)).toBeGreaterThan(10_000);
    await withAcademy(database.db, academyId, (tx) =>
      tx.reply.updateMany({ where: { id: reply.id }, data: { version: 2 } }),
    );
    await announce(database.db, academyId, 'reply.corrected', { replyId: reply.id, version: 2 });
    await vi.waitFor(async () => expect((await read()).stillsVersion).toBe(2), within);
    expect(await drawn()).toBe(2);
  }, 240_000);

  it('removes every file once consent is withdrawn', async () => {
    const { academyId, clip, read, still, blobs } = await sent();
    await vi.waitFor(async () => expect((await read()).stillsVersion).toBe(1), within);
    await withAcademy(database.db, academyId, (tx) =>
      tx.clip.updateMany({ where: { id: clip.id }, data: { status: 'erased', eraseAt: factoryNow } }),
    );
    const erased = () =>
      withAcademy(database.db, academyId, (tx) =>
        tx.clip.findUniqueOrThrow({ where: { academyId_id: { academyId, id: clip.id } } }),
      );
    await vi.waitFor(async () => expect((await erased()).erasedAt).not.toBeNull(), within);
    expect(await blobs.size(renditionKey({ academyId, clipId: clip.id }))).toBeNull();
    expect([await still(0), await still(1)]).toEqual([null, null]);
  }, 240_000);
});
