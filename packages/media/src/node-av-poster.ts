import { writeFile } from 'node:fs/promises';
import type { Frame } from 'node-av/lib';
import { type Disposal, disposeOf } from './disposal.ts';
import type { NodeAv } from './load-node-av.ts';
import type { TranscodeJob } from './transcoder.ts';

/** Writes one upright frame as a JPEG of the poster's size. */
export async function writeNodeAvPoster(av: NodeAv, upright: Frame, job: TranscodeJob): Promise<void> {
  const disposal: Disposal = [];
  try {
    await writeFile(job.posterPath, await jpegOf(av, upright, job, disposal));
  } finally {
    await disposeOf(disposal);
  }
}

async function jpegOf(av: NodeAv, upright: Frame, job: TranscodeJob, disposal: Disposal): Promise<Buffer> {
  const scaled = new av.Frame();
  scaled.alloc();
  disposal.push(() => scaled.free());
  scaled.width = job.posterWidthPx;
  scaled.height = job.posterHeightPx;
  scaled.format = av.AV_PIX_FMT_YUVJ420P;
  av.FFmpegError.throwIfError(scaled.allocBuffer(), 'making the poster');
  const scaler = new av.SoftwareScaleContext();
  scaler.getContext(
    ...([upright.width, upright.height, av.AV_PIX_FMT_YUV420P] as const),
    ...([job.posterWidthPx, job.posterHeightPx, av.AV_PIX_FMT_YUVJ420P] as const),
    av.SWS_BICUBIC,
  );
  disposal.push(() => scaler.freeContext());
  av.FFmpegError.throwIfError(await scaler.scaleFrame(scaled, upright), 'scaling the poster');
  scaled.pts = 0n;

  const codec = av.Codec.findEncoderByName(av.FF_ENCODER_MJPEG);
  if (codec === null) throw new Error('node-av cannot write JPEG');
  const encoder = new av.CodecContext();
  encoder.allocContext3(codec);
  disposal.push(() => encoder.freeContext());
  encoder.width = job.posterWidthPx;
  encoder.height = job.posterHeightPx;
  encoder.pixelFormat = av.AV_PIX_FMT_YUVJ420P;
  encoder.colorRange = av.AVCOL_RANGE_JPEG;
  encoder.timeBase = new av.Rational(1, 25);
  encoder.threadCount = 1;
  encoder.setFlags(av.AV_CODEC_FLAG_QSCALE, av.AV_CODEC_FLAG_BITEXACT);
  encoder.globalQuality = posterQuality * av.FF_QP2LAMBDA;
  av.FFmpegError.throwIfError(await encoder.open2(codec, null), 'opening the JPEG writer');
  scaled.quality = posterQuality * av.FF_QP2LAMBDA;
  await encoder.sendFrame(scaled);
  await encoder.sendFrame(null);
  const packet = new av.Packet();
  packet.alloc();
  disposal.push(() => packet.free());
  av.FFmpegError.throwIfError(await encoder.receivePacket(packet), 'writing the poster');
  if (packet.data === null) throw new Error('The poster came out empty');
  return Buffer.from(packet.data);
}

/** FFmpeg's JPEG scale: 2 is best, 31 is worst. */
const posterQuality = 4;
