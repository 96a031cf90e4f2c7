import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdir, open, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { chooseTranscoder } from './choose-transcoder.ts';
import { meanRate, readFrameTable } from './frame-times.ts';
import { type ClipLimits, defaultLimits } from './limits.ts';
import { type ClipHeader, probeClip } from './probe.ts';
import { type RefusalCode, Refused } from './refusals.ts';
import { fittedSize } from './rendition-size.ts';
import type { Transcoder } from './transcoder.ts';

export type PrepareRequest = {
  readonly sourcePath: string;
  /** Made when missing; holds `rendition.mp4`, `poster.jpg` and `frames.json` afterwards. */
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
      readonly sha256: string;
    }
  | { readonly ok: false; readonly code: RefusalCode };

/**
 * Checks a clip and makes its rendition, poster and table of frame times in this process. Files appear under their names
 * only when all three are whole. Untrusted video belongs in `prepareInChild`.
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
  const part = {
    rendition: name('.rendition.part'),
    poster: name('.poster.part'),
    frames: name('.frames.part'),
  };
  try {
    const size = fittedSize(header, limits.renditionLongSidePx);
    const poster = fittedSize(header, limits.posterLongSidePx);
    const decoded = await transcoder.transcode({
      ...size,
      sourcePath: request.sourcePath,
      renditionPath: part.rendition,
      posterPath: part.poster,
      posterWidthPx: poster.widthPx,
      posterHeightPx: poster.heightPx,
      posterFrame: Math.floor(header.frames * posterShare),
      rotationDeg: header.rotationDeg,
      flipped: header.flipped,
      maxPixels: limits.maxPixels,
      onFrame: percentReporter(header.frames, request.onProgress),
      ...(request.signal ? { signal: request.signal } : {}),
    });
    refuseMissingFrames(decoded, header.frames);
    const table = await readFrameTable(part.rendition);
    if (table.timesS.length !== decoded)
      throw new Error(`The rendition has ${table.timesS.length} of ${decoded} frames`);
    await writeFile(part.frames, JSON.stringify(table));
    const sha256 = await hashOf(part.rendition);
    await settle(part.rendition, name('rendition.mp4'));
    await settle(part.poster, name('poster.jpg'));
    await settle(part.frames, name('frames.json'));
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
      sha256,
    };
  } finally {
    for (const path of Object.values(part)) await rm(path, { force: true });
  }
}

/** Early in the clip the player stands over the ball. */
const posterShare = 0.1;

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

async function hashOf(path: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
  return hash.digest('hex');
}

/** Brings a file's bytes to the disk before its name appears. */
async function settle(from: string, to: string): Promise<void> {
  const file = await open(from, 'r+');
  try {
    await file.datasync();
  } finally {
    await file.close();
  }
  await rename(from, to);
}
