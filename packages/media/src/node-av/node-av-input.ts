import type { CodecContext, FormatContext, Rational } from 'node-av/lib';
import { Refused } from '../header/refusals.ts';
import type { Disposal } from './disposal.ts';
import type { NodeAv } from './load-node-av.ts';

export type NodeAvInput = {
  readonly format: FormatContext;
  readonly decoder: CodecContext;
  readonly streamIndex: number;
  readonly timeBase: Rational;
  readonly rate: Rational;
};

/**
 * Opens a file with the MP4 and MOV reader only, local files only, without files named inside it.
 *
 * @throws Refused `not_video`
 */
export async function openNodeAvFormat(av: NodeAv, path: string, disposal: Disposal): Promise<FormatContext> {
  const format = new av.FormatContext();
  const guards = av.Dictionary.fromObject({ protocol_whitelist: 'file', enable_drefs: '0' });
  const opened = await format.openInput(`file:${path}`, av.InputFormat.findInputFormat('mov'), guards);
  if (opened < 0) throw new Refused('not_video', av.FFmpegError.strerror(opened));
  disposal.push(() => format.closeInput());
  return format;
}

/**
 * Opens a clip and the decoder of its picture.
 *
 * @throws Refused `not_video`, `no_video` or `codec_not_allowed`
 */
export async function openNodeAvInput(
  av: NodeAv,
  path: string,
  maxPixels: number,
  disposal: Disposal,
): Promise<NodeAvInput> {
  const format = await openNodeAvFormat(av, path, disposal);
  const stream = format.streams[format.findBestStream(av.AVMEDIA_TYPE_VIDEO)];
  if (stream === undefined) throw new Refused('no_video');
  const codec = av.Codec.findDecoder(stream.codecpar.codecId);
  if (codec === null) throw new Refused('codec_not_allowed');

  const decoder = new av.CodecContext();
  decoder.allocContext3(codec);
  disposal.push(() => decoder.freeContext());
  av.FFmpegError.throwIfError(decoder.parametersToContext(stream.codecpar), 'reading the header');
  decoder.pktTimebase = stream.timeBase;
  decoder.threadCount = 2;
  const limits = av.Dictionary.fromObject({ max_pixels: String(maxPixels) });
  if ((await decoder.open2(codec, limits)) < 0) throw new Refused('not_video', 'the decoder does not open');
  return { format, decoder, streamIndex: stream.index, timeBase: stream.timeBase, rate: stream.avgFrameRate };
}
