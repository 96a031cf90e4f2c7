import { type EncodedPacket, EncodedPacketSink, Input, MP4, QTFF, UrlSource } from 'mediabunny';
import type { Decoding, FrameSource } from './frame-source.ts';
import { frameAt, middleOf } from './frame-table.ts';
import { openRuns, type Runs } from './open-runs.ts';
import { retryAfterS } from './retry-after.ts';

/** A rendition has a key frame every ten; a clip without them must not be decoded whole for one picture. */
const longestRun = 30;

/** The packets from the key frame before a frame up to the next one, or up to the frame itself. */
const packetsOf = async (
  packets: EncodedPacketSink,
  timesS: readonly number[],
  { wanted, alone }: Decoding,
): Promise<EncodedPacket[]> => {
  const key = await packets.getKeyPacket(middleOf(timesS, wanted));
  const found: EncodedPacket[] = [];
  for (let packet = key; packet !== null; packet = await packets.getNextPacket(packet)) {
    const frame = frameAt(timesS, packet.timestamp);
    if (packet !== key && packet.type === 'key') break;
    if (frame > wanted && (alone || frame > wanted + longestRun)) break;
    found.push(packet);
  }
  return found;
};

/** Frames decoded one by one. Null where this browser cannot decode the clip. */
export const openDecodedFrames = async (
  address: string,
  timesS: readonly number[],
): Promise<FrameSource | null> => {
  if (typeof VideoDecoder === 'undefined') return null;
  const input = new Input({
    source: new UrlSource(address, { getRetryDelay: retryAfterS }),
    formats: [MP4, QTFF],
  });
  let runs: Runs | null = null;
  try {
    const track = await input.getPrimaryVideoTrack();
    const config = await track?.getDecoderConfig();
    if (track === null || !config || !(await track.canDecode()))
      throw new Error('This browser does not decode the clip.');
    const packets = new EncodedPacketSink(track);
    return {
      exact: true,
      async decode(asked) {
        const run = await packetsOf(packets, timesS, asked);
        if (runs === null || runs.broken()) runs = openRuns(config);
        await runs.decode(run, asked, (timestampUs) => frameAt(timesS, timestampUs / 1e6));
      },
      close() {
        runs?.close();
        input.dispose();
      },
    };
  } catch {
    input.dispose();
    return null;
  }
};
