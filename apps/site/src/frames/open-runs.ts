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

/** A decoder that keeps a frame back gives it when it is flushed; until then so long is waited. */
const patienceMs = 60;

/** The picture of a frame, made here and now: handing the frame to another thread takes longer than drawing it. */
const pictureOf = (decoded: VideoFrame): ImageBitmap => {
  const canvas = new OffscreenCanvas(decoded.displayWidth, decoded.displayHeight);
  canvas.getContext('2d', { alpha: false })?.drawImage(decoded, 0, 0);
  decoded.close();
  return canvas.transferToImageBitmap();
};
const rest = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/**
 * One decoder for all runs of a clip: opening one takes longer than decoding ten frames. The wanted frame is decoded and
 * given first; the rest of its run follows.
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
      let shown = false;
      let came = (): void => undefined;
      take = (decoded) => {
        const frame = frameOf(decoded.timestamp);
        if (frame === wanted) {
          give(frame, pictureOf(decoded));
          shown = true;
        } else if (alone || signal.aborted) decoded.close();
        else others.push({ frame, decoded });
        if (frame >= wanted) came();
      };
      /** Makes the picture of the frame that came out last: in the end the way back, the nearest first. */
      const handOver = (fits: (frame: number) => boolean): boolean => {
        const one = others.at(-1);
        if (one === undefined || !fits(one.frame)) return false;
        others.pop();
        give(one.frame, pictureOf(one.decoded));
        return true;
      };
      /** Hands packets over and waits for what comes of the last of them. */
      const feed = async (packets: readonly EncodedPacket[]): Promise<void> => {
        const out = new Promise<void>((resolve) => {
          came = resolve;
        });
        for (const packet of packets) decoder.decode(packet.toEncodedVideoChunk());
        await Promise.race([out, rest(patienceMs)]);
      };
      try {
        const after = run.findIndex((packet) => frameOf(packet.timestamp * 1e6) > wanted);
        const upTo = after === -1 ? run.length : after;
        await feed(run.slice(0, upTo));
        for (const packet of run.slice(upTo)) {
          if (shown && signal.aborted) break;
          await feed([packet]);
          // The next step forward leads here, so this picture is made before the run goes on.
          if (shown && !signal.aborted) handOver((frame) => frame > wanted);
        }
        // Whoever steps on does not wait for what is left.
        if (!shown || !signal.aborted) await decoder.flush();
        if (!shown) throw new Error(`Frame ${wanted} is not in the clip.`);
        while (!signal.aborted && handOver(() => true)) await rest(0);
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
