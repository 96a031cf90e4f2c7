import { type FileHandle, open } from 'node:fs/promises';
import { EncodedPacketSink, FilePathSource, Input, type InputVideoTrack, MP4, QTFF } from 'mediabunny';
import { isProtected, movieBytes, topBoxes } from './boxes.ts';
import type { ClipLimits } from './limits.ts';
import { Refused } from './refusals.ts';
import { sniffContainer } from './sniff-container.ts';

/** What the header of a clip says. Sizes are upright, after the rotation; `frames` counts those that are shown. */
export type ClipHeader = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly codedWidthPx: number;
  readonly codedHeightPx: number;
  readonly rotationDeg: number;
  readonly flipped: boolean;
  readonly durationS: number;
  readonly codec: 'avc' | 'hevc';
  readonly frames: number;
  /** Codec of the first sound track, null where there is none or it is not known. */
  readonly sound: string | null;
};

/**
 * Reads the header only, in pure TypeScript, and refuses what need not reach a decoder.
 *
 * @throws Refused with the first reason found
 */
export async function probeClip(path: string, limits: ClipLimits): Promise<ClipHeader> {
  const file = await open(path, 'r');
  try {
    await refuseByBoxes(file, (await file.stat()).size, limits);
  } finally {
    await file.close();
  }
  // All other formats stay off: a text playlist named .mp4 would otherwise open the files it names.
  const input = new Input({ formats: [MP4, QTFF], source: new FilePathSource(path) });
  try {
    return await readHeader(input, limits);
  } finally {
    input.dispose();
  }
}

async function refuseByBoxes(file: FileHandle, bytes: number, limits: ClipLimits): Promise<void> {
  if (bytes === 0) throw new Refused('empty');
  if (bytes > limits.maxBytes) throw new Refused('too_large', `${bytes} bytes`);
  const head = Buffer.alloc(Math.min(bytes, 512));
  await file.read(head, 0, head.length, 0);
  const container = sniffContainer(head);
  if (container === 'not-video') throw new Refused('not_video');
  if (container === 'other-video') throw new Refused('container_not_allowed');
  const boxes = await topBoxes(file, bytes);
  const last = boxes.at(-1);
  if (last === undefined) throw new Refused('not_video');
  if (last.offset + last.size > bytes) throw new Refused('truncated', `${last.type} ends after the file`);
  const movie = await movieBytes(file, boxes);
  if (movie === null) throw new Refused(boxes.some((box) => box.type === 'mdat') ? 'truncated' : 'not_video');
  if (isProtected(movie)) throw new Refused('protected');
}

async function readHeader(input: Input, limits: ClipLimits): Promise<ClipHeader> {
  const track = await input.getPrimaryVideoTrack().catch((error: unknown) => {
    throw new Refused('not_video', String(error));
  });
  if (track === null) throw new Refused('no_video');
  const codec = await track.getCodec();
  if (codec !== 'avc' && codec !== 'hevc') throw new Refused('codec_not_allowed', String(codec));
  const codedWidthPx = await track.getCodedWidth();
  const codedHeightPx = await track.getCodedHeight();
  if (codedWidthPx < 16 || codedHeightPx < 16)
    throw new Refused('not_video', 'picture smaller than 16 pixels');
  const isTooWide = Math.max(codedWidthPx, codedHeightPx) > limits.maxSidePx;
  if (isTooWide || codedWidthPx * codedHeightPx > limits.maxPixels) {
    throw new Refused('too_large', `${codedWidthPx} x ${codedHeightPx}`);
  }
  const { frames, durationS } = await shownFrames(track, limits);
  return {
    widthPx: await track.getDisplayWidth(),
    heightPx: await track.getDisplayHeight(),
    codedWidthPx,
    codedHeightPx,
    rotationDeg: await track.getRotation(),
    flipped: await track.getFlip(),
    durationS,
    codec,
    frames,
    sound: await soundCodec(input),
  };
}

/** Broken sound is no reason to refuse a picture. */
const soundCodec = async (input: Input): Promise<string | null> => {
  try {
    return (await (await input.getPrimaryAudioTrack())?.getCodec()) ?? null;
  } catch {
    return null;
  }
};

/** Counts frames in the index without reading them; those before time zero are cut off by the file's edit list. */
async function shownFrames(
  track: InputVideoTrack,
  limits: ClipLimits,
): Promise<{ frames: number; durationS: number }> {
  let frames = 0;
  let endS = 0;
  let startS = Number.POSITIVE_INFINITY;
  const packets = new EncodedPacketSink(track).packets(undefined, undefined, { metadataOnly: true });
  for await (const packet of packets) {
    if (packet.timestamp + packet.duration <= 0) continue;
    frames += 1;
    startS = Math.min(startS, packet.timestamp);
    endS = Math.max(endS, packet.timestamp + packet.duration);
    if (frames > limits.maxFrames) throw new Refused('too_long', `more than ${limits.maxFrames} frames`);
  }
  if (frames === 0) throw new Refused('no_video', 'no frames');
  const durationS = endS - Math.max(0, startS);
  if (durationS > limits.maxSeconds) throw new Refused('too_long', `${durationS} s`);
  return { frames, durationS };
}
