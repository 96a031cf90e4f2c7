import type { Packet } from 'node-av/lib';
import { floatsOf } from '../look/sound-samples.ts';
import { soundFilters } from '../transcoder.ts';
import { type Disposal, disposeOf } from './disposal.ts';
import { loadNodeAv, type NodeAv } from './load-node-av.ts';
import { openGraph } from './node-av-graph.ts';
import { openNodeAvFormat } from './node-av-input.ts';

/** The sound of a clip, as `Transcoder.sound` says. */
export async function nodeAvSound(path: string, signal?: AbortSignal): Promise<Float32Array | null> {
  const av = await loadNodeAv();
  const disposal: Disposal = [];
  try {
    return await decodeSound(av, path, disposal, signal);
  } finally {
    await disposeOf(disposal);
  }
}

async function decodeSound(
  av: NodeAv,
  path: string,
  disposal: Disposal,
  signal?: AbortSignal,
): Promise<Float32Array | null> {
  const format = await openNodeAvFormat(av, path, disposal);
  const stream = format.streams[format.findBestStream(av.AVMEDIA_TYPE_AUDIO)];
  const codec = stream === undefined ? null : av.Codec.findDecoder(stream.codecpar.codecId);
  if (stream === undefined || codec === null) return null;
  const decoder = new av.CodecContext();
  decoder.allocContext3(codec);
  disposal.push(() => decoder.freeContext());
  av.FFmpegError.throwIfError(
    decoder.parametersToContext(stream.codecpar),
    'reading the header of the sound',
  );
  decoder.pktTimebase = stream.timeBase;
  if ((await decoder.open2(codec, null)) < 0) return null;
  const [packet, frame, made] = [new av.Packet(), new av.Frame(), new av.Frame()];
  packet.alloc();
  frame.alloc();
  made.alloc();
  disposal.push(
    () => packet.free(),
    () => frame.free(),
    () => made.free(),
  );
  const parts: Buffer[] = [];
  let graph: Awaited<ReturnType<typeof openGraph>> | undefined;
  const drain = async (): Promise<void> => {
    while (graph !== undefined && (await graph.sink.buffersinkGetFrame(made)) >= 0) {
      const bytes = made.data?.[0];
      if (bytes !== undefined) parts.push(Buffer.from(bytes.subarray(0, made.nbSamples * 4)));
      made.unref();
    }
  };
  const decode = async (next: Packet | null): Promise<void> => {
    if ((await decoder.sendPacket(next)) < 0 && next !== null) return;
    while ((await decoder.receiveFrame(frame)) >= 0) {
      // Only the first decoded samples tell for sure what they are.
      graph ??= await openGraph(
        av,
        [
          [
            'abuffer',
            `time_base=${stream.timeBase.num}/${stream.timeBase.den}:sample_rate=${frame.sampleRate}:sample_fmt=${frame.format}:channel_layout=${frame.channelLayout.nbChannels}c`,
          ],
          ...soundFilters,
          ['abuffersink', ''],
        ],
        disposal,
      );
      frame.pts = frame.bestEffortTimestamp;
      av.FFmpegError.throwIfError(await graph.source.buffersrcAddFrame(frame), 'listening');
      frame.unref();
      await drain();
    }
  };
  while ((await format.readFrame(packet)) >= 0) {
    signal?.throwIfAborted();
    if (packet.streamIndex === stream.index) await decode(packet);
    packet.unref();
  }
  await decode(null);
  if (graph !== undefined) await graph.source.buffersrcAddFrame(null);
  await drain();
  return floatsOf(parts);
}
