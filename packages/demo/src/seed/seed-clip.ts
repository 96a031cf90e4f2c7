import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { beginPreparing } from '@ballfirst/services/clips/begin-preparing';
import { finishClip } from '@ballfirst/services/clips/finish-clip';
import { finishPreparing } from '@ballfirst/services/clips/finish-preparing';
import { framesKey, posterKey, renditionKey } from '@ballfirst/services/clips/keys';
import { startClip } from '@ballfirst/services/clips/start-clip';
import type { Resources } from '@ballfirst/services/context';
import type { Truth } from '../golfer/truth.ts';
import { contextOf, type Member, systemContext } from './at-time.ts';

/** A kept clip as it lies in `clips/`: rendered the way the worker would prepare it, with its poster and truth. */
export type KeptFiles = { readonly mp4: Buffer; readonly poster: Buffer; readonly truth: Truth };

export const readKept = async (folder: string, id: string): Promise<KeptFiles> => ({
  mp4: await readFile(path.join(folder, `${id}.mp4`)),
  poster: await readFile(path.join(folder, `${id}.jpg`)),
  truth: JSON.parse(await readFile(path.join(folder, 'truth', `${id}.json`), 'utf8')) as Truth,
});

/** One clip, uploaded and prepared, by the verbs of upload and worker. @returns its id */
export const seedClip = async (
  resources: Resources,
  student: Member,
  kept: KeptFiles,
  now: Date,
): Promise<string> => {
  const mine = contextOf(resources, student, now);
  const clip = await startClip({
    ctx: mine,
    input: { fileName: 'swing.mp4', view: 'face-on', swingLength: 'full', lengthBytes: kept.mp4.length },
  });
  const of = { academyId: student.academyId, clipId: clip.id };
  const { widthPx, heightPx, frames, fps } = {
    widthPx: kept.truth.width,
    heightPx: kept.truth.height,
    frames: kept.truth.frames,
    fps: kept.truth.fps,
  };
  const timesS = Array.from({ length: frames }, (_, frame) => Math.round((frame / fps) * 1e6) / 1e6);
  const table = JSON.stringify({ width: widthPx, height: heightPx, timesS });
  await resources.blobs.put(renditionKey(of), kept.mp4);
  await resources.blobs.put(posterKey(of), kept.poster);
  await resources.blobs.put(framesKey(of), Buffer.from(table));
  await finishClip({ ctx: mine, input: { clipId: clip.id } });
  const system = systemContext(resources, student.academyId, now);
  const begun = await beginPreparing({ ctx: system, input: { clipId: clip.id } });
  if (begun === null) throw new Error('A demo clip could not be prepared.');
  await finishPreparing({
    ctx: system,
    input: {
      clipId: clip.id,
      fence: begun.fence,
      outcome: {
        kind: 'ready',
        widthPx,
        heightPx,
        frames,
        fps,
        durationMs: Math.round((frames / fps) * 1000),
        sha256: createHash('sha256').update(kept.mp4).digest('hex'),
      },
    },
  });
  return clip.id;
};
