import type { Frame, Packet } from 'node-av/lib';
import type { PictureJob, PicturesJob } from '../transcoder.ts';
import { type Disposal, disposeOf } from './disposal.ts';
import { loadNodeAv } from './load-node-av.ts';
import { openGraph } from './node-av-graph.ts';
import { openNodeAvInput } from './node-av-input.ts';
import { pictureSource } from './node-av-upright.ts';

/** Renditions are ours: no larger than this. */
const maxPixels = 4096 * 4096;

type Wanted = {
  readonly path: string;
  readonly filters: readonly (readonly [string, string])[];
  readonly fromS: number;
  readonly keyFramesOnly: boolean;
  readonly signal?: AbortSignal | undefined;
  /** Takes a decoded picture's time in seconds and how to get it; says whether it wants more. */
  readonly take: (timeS: number, rgb: () => Promise<Buffer>) => Promise<boolean>;
};

/** Small pictures of every frame or of key frames, as `Transcoder.pictures` says. */
export const nodeAvPictures = ({ widthPx, heightPx, take, ...job }: PicturesJob): Promise<void> =>
  walk({
    ...{ path: job.path, keyFramesOnly: job.keyFramesOnly, signal: job.signal, fromS: 0 },
    filters: scaled(widthPx, heightPx, 'area'),
    take: async (_, rgb) => {
      take(await rgb());
      return true;
    },
  });

/** One picture, as `Transcoder.picture` says. @throws Error when there is none at that time */
export async function nodeAvPicture(job: PictureJob): Promise<Buffer> {
  const seekS = Math.max(0, job.timeS - Math.min(job.nextS, 0.02) / 2);
  let found: Buffer | undefined;
  await walk({
    ...{ path: job.path, keyFramesOnly: false, signal: job.signal, fromS: seekS },
    filters: scaled(job.widthPx, job.heightPx, 'bicubic'),
    take: async (timeS, rgb) => {
      if (timeS < seekS) return true;
      found = await rgb();
      return false;
    },
  });
  if (found === undefined) throw new Error(`There is no picture at ${job.timeS} s`);
  return found;
}

const scaled = (widthPx: number, heightPx: number, flags: string) =>
  [
    ['scale', `w=${widthPx}:h=${heightPx}:flags=${flags}`],
    ['format', 'pix_fmts=rgb24'],
  ] as const;

async function walk(wanted: Wanted): Promise<void> {
  const av = await loadNodeAv();
  const disposal: Disposal = [];
  try {
    const input = await openNodeAvInput(av, wanted.path, maxPixels, disposal);
    const { source, sink } = await openGraph(
      av,
      [pictureSource(av, input), ...wanted.filters, ['buffersink', '']],
      disposal,
    );
    const [packet, decoded, made] = [new av.Packet(), new av.Frame(), new av.Frame()];
    packet.alloc();
    decoded.alloc();
    made.alloc();
    disposal.push(
      () => packet.free(),
      () => decoded.free(),
      () => made.free(),
    );
    const { num, den } = input.timeBase;
    if (wanted.fromS > 0) {
      const at = BigInt(Math.floor((wanted.fromS * den) / num));
      await input.format.seekFrame(input.streamIndex, at, av.AVSEEK_FLAG_BACKWARD);
    }
    const rgb = async (): Promise<Buffer> => {
      av.FFmpegError.throwIfError(await source.buffersrcAddFrame(decoded), 'scaling a picture');
      av.FFmpegError.throwIfError(await sink.buffersinkGetFrame(made), 'scaling a picture');
      const bytes = rowsOf(made);
      made.unref();
      return bytes;
    };
    const decode = async (next: Packet | null): Promise<boolean> => {
      if ((await input.decoder.sendPacket(next)) < 0 && next !== null) return true;
      while ((await input.decoder.receiveFrame(decoded)) >= 0) {
        const more = await wanted.take((Number(decoded.bestEffortTimestamp) * num) / den, rgb);
        decoded.unref();
        if (!more) return false;
      }
      return true;
    };
    while ((await input.format.readFrame(packet)) >= 0) {
      wanted.signal?.throwIfAborted();
      const ours = packet.streamIndex === input.streamIndex && (!wanted.keyFramesOnly || packet.isKeyframe);
      const more = ours ? await decode(packet) : true;
      packet.unref();
      if (!more) return;
    }
    await decode(null);
  } finally {
    await disposeOf(disposal);
  }
}

/** The picture without the bytes that fill up its rows. */
function rowsOf(frame: Frame): Buffer {
  const plane = frame.data?.[0];
  const stride = frame.linesize[0];
  if (plane === undefined || stride === undefined) throw new Error('A picture came out empty');
  const row = frame.width * 3;
  const rows = Buffer.alloc(row * frame.height);
  for (let y = 0; y < frame.height; y += 1) plane.copy(rows, y * row, y * stride, y * stride + row);
  return rows;
}
