import { setImmediate } from 'node:timers/promises';
import type { CodecContext, FilterContext, Frame, Packet } from 'node-av/lib';
import { Refused } from '../header/refusals.ts';
import type { TranscodeJob, Transcoder } from '../transcoder.ts';
import { type Disposal, disposeOf } from './disposal.ts';
import { loadNodeAv, type NodeAv } from './load-node-av.ts';
import { openNodeAvInput } from './node-av-input.ts';
import { nodeAvPicture, nodeAvPictures } from './node-av-pictures.ts';
import { openNodeAvRendition } from './node-av-rendition.ts';
import { nodeAvSound } from './node-av-sound.ts';
import { openUprightGraph } from './node-av-upright.ts';

/** The embedded FFmpeg of the optional dependency `node-av`, driven packet by packet. */
export const nodeAv: Transcoder = {
  name: 'node-av',
  missing,
  transcode,
  pictures: nodeAvPictures,
  picture: nodeAvPicture,
  sound: nodeAvSound,
};

async function missing(): Promise<string | null> {
  try {
    const av = await loadNodeAv();
    return av.Codec.findEncoderByName(av.FF_ENCODER_LIBX264) === null ? 'node-av cannot write H.264' : null;
  } catch (error) {
    return `node-av is not installed for this machine (${error instanceof Error ? error.message : String(error)})`;
  }
}

async function transcode(job: TranscodeJob): Promise<number> {
  const av = await loadNodeAv();
  const disposal: Disposal = [];
  const oversized = listenForOversize(av, disposal);
  try {
    const frames = await pump(av, job, disposal);
    if (frames === 0 && (await oversized()))
      throw new Refused('too_large', 'the pictures exceed their header');
    return frames;
  } finally {
    await disposeOf(disposal);
  }
}

/** The guard on the decoder answers with the same number as any damage; only its words tell that a size was refused. */
function listenForOversize(av: NodeAv, disposal: Disposal): () => Promise<boolean> {
  let heard = false;
  const listen = (_: number, words: string) => {
    heard ||= words.includes('exceeds specified max pixel count');
  };
  av.Log.setCallback(listen, { maxLevel: av.AV_LOG_ERROR });
  disposal.push(() => av.Log.resetCallback());
  return async () => {
    // Words of the decoder's threads arrive on the next turn of the event loop.
    await setImmediate();
    return heard;
  };
}

async function pump(av: NodeAv, job: TranscodeJob, disposal: Disposal): Promise<number> {
  const input = await openNodeAvInput(av, job.sourcePath, job.maxPixels, disposal);
  const graph = await openUprightGraph(av, job, input, disposal);
  const soundIndex = job.keepSound ? input.format.findBestStream(av.AVMEDIA_TYPE_AUDIO) : -1;
  const output = await openNodeAvRendition(
    av,
    job,
    { timeBase: input.timeBase, rate: input.rate },
    disposal,
    {
      sound: input.format.streams[soundIndex],
    },
  );
  const [packet, decoded, upright] = [new av.Packet(), new av.Frame(), new av.Frame()];
  packet.alloc();
  decoded.alloc();
  upright.alloc();
  disposal.push(
    () => packet.free(),
    () => decoded.free(),
    () => upright.free(),
  );

  let frames = 0;
  let lastPts: bigint | null = null;
  const take = async (): Promise<void> => {
    while ((await graph.sink.buffersinkGetFrame(upright)) >= 0) {
      if (lastPts === null || upright.pts > lastPts) {
        lastPts = upright.pts;
        await output.write(upright);
        frames += 1;
        job.onFrame(frames);
      }
      upright.unref();
    }
  };
  const decode = (next: Packet | null) => decodeInto(av, input.decoder, next, decoded, graph.source, take);
  while ((await input.format.readFrame(packet)) >= 0) {
    job.signal?.throwIfAborted();
    if (packet.streamIndex === input.streamIndex) await decode(packet);
    else if (packet.streamIndex === soundIndex) await output.writeSound(packet);
    packet.unref();
  }
  await decode(null);
  av.FFmpegError.throwIfError(await graph.source.buffersrcAddFrame(null), 'ending the filters');
  await take();
  await output.end();
  return frames;
}

/** Damaged packets are passed over, as every player does; the count of frames tells afterwards what is missing. */
async function decodeInto(
  av: NodeAv,
  decoder: CodecContext,
  packet: Packet | null,
  frame: Frame,
  source: FilterContext,
  take: () => Promise<void>,
): Promise<void> {
  if ((await decoder.sendPacket(packet)) < 0 && packet !== null) return;
  while ((await decoder.receiveFrame(frame)) >= 0) {
    frame.pts = frame.bestEffortTimestamp;
    av.FFmpegError.throwIfError(await source.buffersrcAddFrame(frame), 'turning the picture');
    frame.unref();
    await take();
  }
}
