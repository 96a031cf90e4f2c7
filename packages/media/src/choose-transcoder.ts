import { ffmpegCli } from './ffmpeg/ffmpeg-cli.ts';
import { nodeAv } from './node-av/node-av.ts';
import type { Transcoder } from './transcoder.ts';

/** A system `ffmpeg` where it is found, else the embedded one. */
export const transcoders: readonly Transcoder[] = [ffmpegCli, nodeAv];

/**
 * The first of the list that can run here.
 *
 * @throws Error that names every reason when none can
 */
export async function chooseTranscoder(among: readonly Transcoder[] = transcoders): Promise<Transcoder> {
  const reasons: string[] = [];
  for (const transcoder of among) {
    const reason = await transcoder.missing();
    if (reason === null) return transcoder;
    reasons.push(reason);
  }
  throw new Error(`No way to prepare video on this machine: ${reasons.join('; ')}`);
}
