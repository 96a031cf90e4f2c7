import { rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { PreparingCrashed, prepareInChild, preparePhotoInChild } from '@ballfirst/media/child/child';
import type { PreparedClip } from '@ballfirst/media/prepare';
import type { PreparedPhoto } from '@ballfirst/media/prepare-photo';
import { beginPreparing } from '@ballfirst/services/clips/begin-preparing';
import { eraseClip } from '@ballfirst/services/clips/erase-clip';
import { finishPreparing, type Outcome } from '@ballfirst/services/clips/finish-preparing';
import {
  framesKey,
  originalKey,
  photoKey,
  posterKey,
  renditionKey,
  stripKey,
} from '@ballfirst/services/clips/keys';
import { reportPercent } from '@ballfirst/services/clips/report-percent';
import type { Context } from '@ballfirst/services/context';
import { gripView } from '@ballfirst/services/grip-photo/grip-photo-of';
import { eventJob } from '../event-job.ts';
import { mediaChildEntry } from '../media-child-entry.ts';

/** A clip whose process died this often is refused: whatever it is, it is no video we can open. */
const crashesAtMost = 3;

/** A photo is open and shut within a second; whatever takes so long is none. */
const photoMs = 60_000;

/** Long work in three steps: start (a transaction, a fencing number), work (none), finish (an old number is refused). */
export const prepareClip = eventJob({
  name: 'prepare-clip',
  queue: 'media',
  on: 'clip.uploaded',
  handle: async ({ contextOf, signal, resources }, event) => {
    const ctx = contextOf(event.academyId);
    const { clipId } = event.payload;
    const begun = await beginPreparing({ ctx, input: { clipId } });
    if (begun === null) return;
    const of = { academyId: event.academyId, clipId };
    const source = await resources.blobs.fetch(originalKey(of));
    const outFolder = path.join(path.dirname(source), `work-${begun.fence}`);
    try {
      const isPhoto = begun.view === gripView;
      const outcome = await work(ctx, { clipId, fence: begun.fence, source, outFolder, signal, isPhoto });
      if (outcome === null) return;
      if (outcome.kind !== 'refused') await keep(ctx, outFolder, isPhoto ? photoFiles(of) : clipFiles(of));
      const { done } = await finishPreparing({ ctx, input: { clipId, fence: begun.fence, outcome } });
      // Consent may have been withdrawn while this was at work: then nothing that it made may stay.
      if (!done) await eraseClip({ ctx, input: { clipId } });
      // The original carries the place where it was filmed: it goes as soon as it is not needed.
      if (done) await resources.blobs.remove(originalKey(of));
    } finally {
      await rm(outFolder, { recursive: true, force: true });
    }
  },
});

type Work = {
  clipId: string;
  fence: number;
  source: string;
  outFolder: string;
  signal: AbortSignal;
  isPhoto: boolean;
};

/** @returns null when somebody began again meanwhile */
const work = async (ctx: Context, it: Work): Promise<Outcome | null> => {
  const overtaken = new AbortController();
  let said = 0;
  const onProgress = (percent: number): void => {
    if (percent < said + 5) return;
    said = percent;
    void reportPercent({ ctx, input: { clipId: it.clipId, fence: it.fence, percent } }).then(
      ({ current }) => current || overtaken.abort(),
      (error) => ctx.resources.log.warn({ error: String(error) }, 'progress was not written'),
    );
  };
  try {
    const request = {
      ...mediaChildEntry(),
      sourcePath: it.source,
      outFolder: it.outFolder,
      signal: AbortSignal.any([it.signal, overtaken.signal]),
    };
    if (it.isPhoto) return outcomeOfPhoto(await preparePhotoInChild({ ...request, timeoutMs: photoMs }));
    return outcomeOf(await prepareInChild({ ...request, onProgress }));
  } catch (error) {
    if (overtaken.signal.aborted) return null;
    if (error instanceof PreparingCrashed && it.fence >= crashesAtMost) {
      return { kind: 'refused', refusal: it.isPhoto ? 'photo_broken' : 'not_video' };
    }
    throw error;
  }
};

const outcomeOf = (prepared: PreparedClip): Outcome =>
  prepared.ok
    ? {
        kind: 'ready',
        widthPx: prepared.widthPx,
        heightPx: prepared.heightPx,
        frames: prepared.frames,
        fps: prepared.fps,
        durationMs: prepared.durationMs,
        sha256: prepared.sha256,
        suggestion: prepared.suggestion,
      }
    : { kind: 'refused', refusal: prepared.code };

const outcomeOfPhoto = (prepared: PreparedPhoto): Outcome => {
  if (!prepared.ok) return { kind: 'refused', refusal: prepared.code };
  const { widthPx, heightPx, sha256 } = prepared;
  return { kind: 'photo', widthPx, heightPx, sha256 };
};

type Of = { academyId: string; clipId: string };
type Files = readonly (readonly [name: string, key: string])[];
const clipFiles = (of: Of): Files => [
  ['frames.json', framesKey(of)],
  ['poster.jpg', posterKey(of)],
  ['strip.jpg', stripKey(of)],
  ['rendition.mp4', renditionKey(of)],
];
const photoFiles = (of: Of): Files => [['photo.jpg', photoKey(of)]];

/** Puts the files under their keys. Two overlapping runs make the same files from the same source. */
const keep = async (ctx: Context, outFolder: string, files: Files): Promise<void> => {
  const { blobs } = ctx.resources;
  for (const [name, key] of files) await rename(path.join(outFolder, name), blobs.localPath(key));
  // The row will say that they are there: they must outlast a loss of power before it does.
  for (const [, key] of files) {
    await blobs.settle(key);
    await blobs.release(key);
  }
};
