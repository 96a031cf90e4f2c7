import type { CodecContext, FormatContext, Frame, Packet, Rational, Stream } from 'node-av/lib';
import { type TranscodeJob, x264Quality, x264Settings } from '../transcoder.ts';
import type { Disposal } from './disposal.ts';
import type { NodeAv } from './load-node-av.ts';

/** An encoder by its FFmpeg name, with its options. */
export type EncoderChoice = {
  readonly name: 'libx264' | 'libx265';
  readonly options: Record<string, string>;
};

const renditionEncoder: EncoderChoice = {
  name: 'libx264',
  options: { ...x264Quality, 'x264-params': x264Settings },
};

export type NodeAvRendition = {
  readonly write: (frame: Frame) => Promise<void>;
  /** Takes a packet of the sound over as it is; nothing where none was asked for. */
  readonly writeSound: (packet: Packet) => Promise<void>;
  readonly end: () => Promise<void>;
};

type Timing = { readonly timeBase: Rational; readonly rate: Rational };

/** The H.264 encoder and the MP4 writer. The stream is made anew, so that no rotation and no tag comes over. */
export async function openNodeAvRendition(
  av: NodeAv,
  job: TranscodeJob,
  timing: Timing,
  disposal: Disposal,
  { choice = renditionEncoder, sound }: { choice?: EncoderChoice; sound?: Stream | undefined } = {},
): Promise<NodeAvRendition> {
  const encoder = await openEncoder(av, job, timing, choice, disposal);
  const format = new av.FormatContext();
  av.FFmpegError.throwIfError(
    format.allocOutputContext2(null, 'mp4', `file:${job.renditionPath}`),
    'opening the rendition',
  );
  disposal.push(() => format.freeContext());
  const stream = format.newStream(null);
  av.FFmpegError.throwIfError(stream.codecpar.fromContext(encoder), 'describing the rendition');
  stream.timeBase = timing.timeBase;
  stream.avgFrameRate = timing.rate;
  const soundStream = sound === undefined ? undefined : addSound(av, format, sound);
  format.setFlags(av.AVFMT_FLAG_BITEXACT);
  av.FFmpegError.throwIfError(await format.openOutput(), 'writing the rendition');
  disposal.push(() => format.closeOutput());
  const header = await format.writeHeader(av.Dictionary.fromObject({ movflags: '+faststart' }));
  av.FFmpegError.throwIfError(header, 'writing the header');

  const packet = new av.Packet();
  packet.alloc();
  disposal.push(() => packet.free());
  const drain = () => drainEncoder(av, encoder, format, stream, timing.timeBase, packet);
  return {
    write: async (frame) => {
      frame.pictType = av.AV_PICTURE_TYPE_NONE;
      av.FFmpegError.throwIfError(await encoder.sendFrame(frame), 'encoding');
      await drain();
    },
    writeSound: async (packet) => {
      if (sound === undefined || soundStream === undefined) return;
      packet.streamIndex = soundStream.index;
      packet.rescaleTs(sound.timeBase, soundStream.timeBase);
      packet.pos = -1n;
      av.FFmpegError.throwIfError(await format.interleavedWriteFrame(packet), 'writing the sound');
    },
    end: async () => {
      await encoder.sendFrame(null);
      await drain();
      av.FFmpegError.throwIfError(await format.writeTrailer(), 'finishing the rendition');
    },
  };
}

/** The description of the sound comes over, its tags do not. */
function addSound(av: NodeAv, format: FormatContext, sound: Stream): Stream {
  const stream = format.newStream(null);
  av.FFmpegError.throwIfError(sound.codecpar.copy(stream.codecpar), 'describing the sound');
  stream.codecpar.codecTag = 0;
  stream.timeBase = sound.timeBase;
  return stream;
}

async function openEncoder(
  av: NodeAv,
  job: TranscodeJob,
  timing: Timing,
  choice: EncoderChoice,
  disposal: Disposal,
): Promise<CodecContext> {
  const names = { libx264: av.FF_ENCODER_LIBX264, libx265: av.FF_ENCODER_LIBX265 };
  const codec = av.Codec.findEncoderByName(names[choice.name]);
  if (codec === null) throw new Error(`node-av has no ${choice.name}`);
  const encoder = new av.CodecContext();
  encoder.allocContext3(codec);
  disposal.push(() => encoder.freeContext());
  encoder.width = job.widthPx;
  encoder.height = job.heightPx;
  encoder.pixelFormat = av.AV_PIX_FMT_YUV420P;
  encoder.timeBase = timing.timeBase;
  if (timing.rate.num > 0) encoder.framerate = timing.rate;
  encoder.colorRange = av.AVCOL_RANGE_MPEG;
  encoder.sampleAspectRatio = new av.Rational(1, 1);
  encoder.setFlags(av.AV_CODEC_FLAG_GLOBAL_HEADER, av.AV_CODEC_FLAG_BITEXACT);
  const options = av.Dictionary.fromObject(choice.options);
  av.FFmpegError.throwIfError(await encoder.open2(codec, options), 'opening the encoder');
  return encoder;
}

async function drainEncoder(
  av: NodeAv,
  encoder: CodecContext,
  format: FormatContext,
  stream: Stream,
  timeBase: Rational,
  packet: InstanceType<NodeAv['Packet']>,
): Promise<void> {
  while ((await encoder.receivePacket(packet)) >= 0) {
    packet.streamIndex = stream.index;
    packet.rescaleTs(timeBase, stream.timeBase);
    av.FFmpegError.throwIfError(await format.interleavedWriteFrame(packet), 'writing the rendition');
  }
}
