import type { EncodedPacket } from 'mediabunny';
import type { Decoding } from './frame-source.ts';

export type Runs = {
  /** Decodes a run that begins with a key frame. @throws Error when its wanted frame does not come out */
  decode(
    run: readonly EncodedPacket[],
    asked: Decoding,
    frameOf: (timestampUs: number) => number,
  ): Promise<void>;
  /** A decoder that failed once is done for; another has to be opened. */
  broken(): boolean;
  close(): void;
};

/**
 * One decoder for all runs of a clip: opening one takes longer than decoding ten frames. The wanted picture is made as
 * soon as its frame is out, while the others are still decoded.
 */
export const openRuns = (config: VideoDecoderConfig): Runs => {
  let take: (frame: VideoFrame) => void = (frame) => frame.close();
  let failed: unknown = null;
  const decoder = new VideoDecoder({
    output: (frame) => take(frame),
    error: (error) => {
      failed = error;
    },
  });
  decoder.configure({ ...config, optimizeForLatency: true });

  return {
    broken: () => failed !== null || decoder.state === 'closed',
    async decode(run, { wanted, alone, give, signal }, frameOf) {
      const others: { frame: number; decoded: VideoFrame }[] = [];
      let shown: Promise<void> | null = null;
      const picture = async (frame: number, decoded: VideoFrame) => {
        try {
          give(frame, await createImageBitmap(decoded));
        } finally {
          decoded.close();
        }
      };
      take = (decoded) => {
        const frame = frameOf(decoded.timestamp);
        if (frame === wanted) shown = picture(frame, decoded);
        else if (alone || signal.aborted) decoded.close();
        else others.push({ frame, decoded });
      };
      try {
        for (const packet of run) decoder.decode(packet.toEncodedVideoChunk());
        await decoder.flush();
        await shown;
        if (shown === null) throw new Error(`Frame ${wanted} is not in the clip.`);
        // The nearest first: that is where the next step leads.
        others.sort((a, b) => Math.abs(b.frame - wanted) - Math.abs(a.frame - wanted));
        while (!signal.aborted) {
          const one = others.pop();
          if (one === undefined) break;
          await picture(one.frame, one.decoded);
        }
      } finally {
        take = (frame) => frame.close();
        for (const { decoded } of others) decoded.close();
      }
    },
    close() {
      if (decoder.state !== 'closed') decoder.close();
    },
  };
};
