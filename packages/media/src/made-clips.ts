import { readFile, writeFile } from 'node:fs/promises';
import {
  AudioSample,
  AudioSampleSource,
  BufferTarget,
  EncodedAudioPacketSource,
  EncodedPacketSink,
  EncodedVideoPacketSource,
  FilePathSource,
  Input,
  MovOutputFormat,
  MP4,
  Mp4OutputFormat,
  Output,
  QTFF,
  type VideoCodec,
} from 'mediabunny';
import { type MadeSound, madeSoundRate } from './made-sound.ts';
import { type Disposal, disposeOf } from './node-av/disposal.ts';
import { loadNodeAv } from './node-av/load-node-av.ts';
import { type EncoderChoice, openNodeAvRendition } from './node-av/node-av-rendition.ts';

/** Clips made while tests run, so that none need lie in the tree. The upper left quarter of the picture is bright. */
export type Painted = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly timesS: readonly number[];
  /** Bright stripes over the lower half in these frames, which pass by: something moves. */
  readonly moving?: { readonly from: number; readonly to: number };
};

/** Ticks a second; every time used in tests is a whole number of them. */
export const ticks = 12_000;
const bright = 225;
const dark = 40;

/** As phones write by default: HEVC with B-frames, so that frames are not stored in the order shown. */
export const likeAPhone: EncoderChoice = {
  name: 'libx265',
  options: { preset: 'ultrafast', 'x265-params': 'log-level=none:bframes=2:pools=1' },
};

/** Writes an MP4, H.264 unless told otherwise, whose frames are shown at the times given. */
export async function paintClip(path: string, clip: Painted, encoder?: EncoderChoice): Promise<void> {
  const av = await loadNodeAv();
  const disposal: Disposal = [];
  const timeBase = new av.Rational(1, ticks);
  try {
    const job = {
      ...{ sourcePath: '', renditionPath: path, keepSound: false, maxPixels: 0, onFrame: () => {} },
      ...{ widthPx: clip.widthPx, heightPx: clip.heightPx, rotationDeg: 0, flipped: false },
    };
    const output = await openNodeAvRendition(
      av,
      job,
      { timeBase, rate: new av.Rational(30, 1) },
      disposal,
      encoder === undefined ? {} : { choice: encoder },
    );
    for (const [index, timeS] of clip.timesS.entries()) {
      const { widthPx: width, heightPx: height } = clip;
      const pts = BigInt(Math.round(timeS * ticks));
      const frame = av.Frame.fromVideoBuffer(paintQuarter(clip, index), {
        ...{ width, height, format: av.AV_PIX_FMT_YUV420P, timeBase, pts },
      });
      await output.write(frame);
      frame.free();
    }
    await output.end();
  } finally {
    await disposeOf(disposal);
  }
}

function paintQuarter({ widthPx, heightPx, moving }: Painted, frame: number): Buffer {
  const picture = Buffer.alloc((widthPx * heightPx * 3) / 2, 128);
  const moves = moving !== undefined && frame >= moving.from && frame <= moving.to;
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) {
      const lit = x < widthPx / 2 && y < heightPx / 2;
      const stripe = moves && y >= heightPx / 2 && (x + 5 * frame) % 40 < 20;
      picture[y * widthPx + x] = lit || stripe ? bright : dark + (frame % 8);
    }
  }
  return picture;
}

export type Remade = {
  readonly rotation?: 0 | 90 | 180 | 270;
  readonly flip?: boolean;
  readonly kind?: 'mp4' | 'mov';
  /** Says another codec in the header than the packets hold. */
  readonly codec?: VideoCodec;
  readonly tags?: Record<string, string>;
  readonly indexLast?: boolean;
  readonly sound?: MadeSound;
};

/** Writes the packets of a clip anew with another header around them. */
export async function remakeClip(from: string, to: string, change: Remade): Promise<void> {
  const input = new Input({ formats: [MP4, QTFF], source: new FilePathSource(from) });
  const track = await input.getPrimaryVideoTrack();
  const config = await track?.getDecoderConfig();
  if (track === null || config === null || config === undefined) throw new Error('Nothing to remake');
  const fastStart = change.indexLast ? false : 'in-memory';
  const format =
    change.kind === 'mov' ? new MovOutputFormat({ fastStart }) : new Mp4OutputFormat({ fastStart });
  const target = new BufferTarget();
  const output = new Output({ format, target });
  const source = new EncodedVideoPacketSource(change.codec ?? 'avc');
  output.addVideoTrack(source, { rotation: change.rotation ?? 0, flip: change.flip ?? false });
  const { sound } = change;
  const heard = sound === undefined ? undefined : new EncodedAudioPacketSource('aac');
  if (heard !== undefined) output.addAudioTrack(heard, { name: 'phone of a player' });
  if (change.tags) output.setMetadataTags({ raw: change.tags, title: 'at home' });
  await output.start();
  const decoderConfig = change.codec === 'vp9' ? { ...config, codec: 'vp09.00.10.08' } : config;
  for await (const packet of new EncodedPacketSink(track).packets())
    await source.add(packet, { decoderConfig });
  source.close();
  for (const packet of sound?.packets ?? []) {
    const { description = new Uint8Array() } = sound ?? {};
    const soundConfig = { codec: 'mp4a.40.2', numberOfChannels: 1, sampleRate: madeSoundRate, description };
    await heard?.add(packet, { decoderConfig: soundConfig });
  }
  await output.finalize();
  input.dispose();
  await writeFile(to, Buffer.from(target.buffer ?? new ArrayBuffer(0)));
}

/** A MOV with a second of silence and no picture. */
export async function soundOnly(to: string): Promise<void> {
  const target = new BufferTarget();
  const output = new Output({ format: new MovOutputFormat({ fastStart: 'in-memory' }), target });
  const source = new AudioSampleSource({ codec: 'pcm-s16' });
  output.addAudioTrack(source);
  await output.start();
  const data = new Int16Array(8000);
  await source.add(
    new AudioSample({ data, format: 's16', numberOfChannels: 1, sampleRate: 8000, timestamp: 0 }),
  );
  await output.finalize();
  await writeFile(to, Buffer.from(target.buffer ?? new ArrayBuffer(0)));
}

/** Copies a file with every occurrence of some bytes replaced by others of the same length. */
export async function patchFile(from: string, to: string, find: Buffer, put: Buffer): Promise<void> {
  const bytes = await readFile(from);
  for (let at = bytes.indexOf(find); at >= 0; at = bytes.indexOf(find, at + put.length)) put.copy(bytes, at);
  await writeFile(to, bytes);
}
