import { EncodedPacketSink, FilePathSource, Input, MP4 } from 'mediabunny';

/** The table a browser steps by: size of the rendition in pixels and the presentation time of each frame in seconds. */
export type FrameTable = {
  readonly width: number;
  readonly height: number;
  readonly timesS: readonly number[];
};

/** The same with the frames that can be decoded by themselves. */
export type RenditionTable = FrameTable & { readonly keys: readonly number[] };

/**
 * Reads the table from a finished rendition, by the same reader the browser uses. It has no B-frames, so frames lie in
 * the order in which they are shown.
 *
 * @throws Error when the rendition is not what it must be
 */
export async function readFrameTable(path: string): Promise<RenditionTable> {
  const input = new Input({ formats: [MP4], source: new FilePathSource(path) });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (track === null) throw new Error('The rendition has no picture');
    if ((await track.getRotation()) !== 0) throw new Error('The rendition is not upright');
    const timesS: number[] = [];
    const keys: number[] = [];
    for await (const packet of new EncodedPacketSink(track).packets(undefined, undefined, {
      metadataOnly: true,
    })) {
      if (packet.type === 'key') keys.push(timesS.length);
      timesS.push(packet.timestamp);
    }
    return { width: await track.getDisplayWidth(), height: await track.getDisplayHeight(), timesS, keys };
  } finally {
    input.dispose();
  }
}

/** Frames a second between the first and the last frame; 0 when there is only one. */
export function meanRate(timesS: readonly number[]): number {
  const spanS = (timesS.at(-1) ?? 0) - (timesS[0] ?? 0);
  return spanS > 0 ? (timesS.length - 1) / spanS : 0;
}
