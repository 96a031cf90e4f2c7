import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import { chooseTranscoder } from './choose-transcoder.ts';
import { meanRate, type RenditionTable, readFrameTable } from './header/frame-times.ts';
import { type ClipLimits, defaultLimits } from './header/limits.ts';
import { type ClipHeader, probeClip } from './header/probe.ts';
import { type RefusalCode, Refused } from './header/refusals.ts';
import { jpegOf } from './jpeg.ts';
import { lookAt } from './look/look-at.ts';
import { fittedSize } from './rendition-size.ts';
import { hashOf, settle } from './settle.ts';
import type { Transcoder } from './transcoder.ts';

export type PrepareRequest = {
  readonly sourcePath: string;
  /** Made when missing; holds `rendition.mp4`, `poster.jpg`, `strip.jpg` and `frames.json` afterwards. */
  readonly outFolder: string;
  readonly limits?: ClipLimits;
  readonly onProgress?: (percent: number) => void;
  readonly signal?: AbortSignal;
  readonly transcoder?: Transcoder;
};

/** What became of a clip. Sizes in pixels, upright; `sha256` (hex) is that of the rendition. */
export type PreparedClip =
  | {
      readonly ok: true;
      readonly widthPx: number;
      readonly heightPx: number;
      readonly frames: number;
      readonly fps: number;
      readonly durationMs: number;
      readonly renditionPath: string;
      readonly posterPath: string;
      readonly framesPath: string;
      readonly stripPath: string;
      readonly suggestion: Suggestion;
      readonly sha256: string;
    }
  | { readonly ok: false; readonly code: RefusalCode };

/**
 * Checks a clip, makes its rendition, poster, strip of film and table of frame times, and says where to look first, in this
 * process. Files appear under their names only when all are whole. Untrusted video belongs in `prepareInChild`.
 *
 * @throws Error for trouble that is not the clip's (disk full, no decoder, aborted): worth another try
 */
export async function prepareClip(request: PrepareRequest): Promise<PreparedClip> {
  const limits = request.limits ?? defaultLimits;
  try {
    const header = await probeClip(request.sourcePath, limits);
    request.signal?.throwIfAborted();
    return await makeFiles(request, limits, header);
  } catch (error) {
    if (error instanceof Refused) return { ok: false, code: error.code };
    throw error;
  }
}

async function makeFiles(
  request: PrepareRequest,
  limits: ClipLimits,
  header: ClipHeader,
): Promise<PreparedClip> {
  const transcoder = request.transcoder ?? (await chooseTranscoder());
  await mkdir(request.outFolder, { recursive: true });
  const name = (file: string) => join(request.outFolder, file);
  const part = (file: FileName) => name(`.${file}.part`);
  const { signal } = request;
  try {
    const decoded = await transcoder.transcode({
      ...fittedSize(header, limits.renditionLongSidePx),
      sourcePath: request.sourcePath,
      renditionPath: part('rendition.mp4'),
      rotationDeg: header.rotationDeg,
      flipped: header.flipped,
      keepSound: header.sound === 'aac',
      maxPixels: limits.maxPixels,
      onFrame: percentReporter(header.frames, request.onProgress),
      ...(signal ? { signal } : {}),
    });
    refuseMissingFrames(decoded, header.frames);
    const table = await readFrameTable(part('rendition.mp4'));
    if (table.timesS.length !== decoded)
      throw new Error(`The rendition has ${table.timesS.length} of ${decoded} frames`);
    const { keys, ...written } = table;
    await writeFile(part('frames.json'), JSON.stringify(written));
    const looked = await lookAt(transcoder, part('rendition.mp4'), table, signal);
    await writeFile(part('strip.jpg'), looked.strip);
    const poster = await posterOf(transcoder, part('rendition.mp4'), table, {
      frame: looked.posterFrame,
      longSidePx: limits.posterLongSidePx,
    });
    await writeFile(part('poster.jpg'), poster);
    const sha256 = await hashOf(part('rendition.mp4'));
    for (const file of fileNames) await settle(part(file), name(file));
    request.onProgress?.(100);
    return {
      ok: true,
      widthPx: table.width,
      heightPx: table.height,
      frames: decoded,
      fps: Math.round(meanRate(table.timesS) * 1000) / 1000,
      durationMs: Math.round(header.durationS * 1000),
      renditionPath: name('rendition.mp4'),
      posterPath: name('poster.jpg'),
      framesPath: name('frames.json'),
      stripPath: name('strip.jpg'),
      suggestion: looked.suggestion,
      sha256,
    };
  } finally {
    for (const file of fileNames) await rm(part(file), { force: true });
  }
}

const fileNames = ['rendition.mp4', 'poster.jpg', 'strip.jpg', 'frames.json'] as const;
type FileName = (typeof fileNames)[number];

/** The picture that stands for the clip: its liveliest moment. */
async function posterOf(
  transcoder: Transcoder,
  path: string,
  { width, height, timesS }: RenditionTable,
  { frame, longSidePx }: { frame: number; longSidePx: number },
): Promise<Buffer> {
  const size = fittedSize({ widthPx: width, heightPx: height }, longSidePx);
  const timeS = timesS[frame] ?? 0;
  const nextS = (timesS[frame + 1] ?? timeS + 0.02) - timeS;
  return jpegOf({ ...size, rgb: await transcoder.picture({ path, timeS, nextS, ...size }) }, 80);
}

/** Frames the index promises but the data does not hold. One, or one in fifty, may be lost to a cut by the phone. */
function refuseMissingFrames(decoded: number, promised: number): void {
  if (decoded === 0) throw new Refused('not_video', 'no frame could be decoded');
  const missing = promised - decoded;
  if (missing > Math.max(1, promised / 50))
    throw new Refused('truncated', `${decoded} of ${promised} frames`);
}

/** Reports whole percents, each once, and keeps 100 for the end. */
function percentReporter(frames: number, report: PrepareRequest['onProgress']): (count: number) => void {
  let last = -1;
  return (count) => {
    const percent = Math.min(99, Math.floor((100 * count) / frames));
    if (percent <= last) return;
    last = percent;
    report?.(percent);
  };
}
