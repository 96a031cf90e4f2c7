import { EncodedPacket } from 'mediabunny';
import { type Disposal, disposeOf } from './node-av/disposal.ts';
import { loadNodeAv } from './node-av/load-node-av.ts';

export const madeSoundRate = 48_000;
const blockSamples = 1024;

/** Sound as AAC packets with what a decoder must know of them, for clips made while tests run. */
export type MadeSound = { readonly packets: readonly EncodedPacket[]; readonly description: Uint8Array };

/** Encodes one channel at `madeSoundRate`; the encoder's own lead-in is left out, so that times are those of the samples. */
export async function encodeSound(samples: Float32Array): Promise<MadeSound> {
  const av = await loadNodeAv();
  const disposal: Disposal = [];
  try {
    const codec = av.Codec.findEncoder(av.AV_CODEC_ID_AAC);
    if (codec === null) throw new Error('node-av cannot write AAC');
    const encoder = new av.CodecContext();
    encoder.allocContext3(codec);
    disposal.push(() => encoder.freeContext());
    encoder.sampleRate = madeSoundRate;
    encoder.sampleFormat = av.AV_SAMPLE_FMT_FLTP;
    encoder.channelLayout = av.AV_CHANNEL_LAYOUT_MONO;
    encoder.bitRate = 128_000n;
    encoder.timeBase = new av.Rational(1, madeSoundRate);
    encoder.setFlags(av.AV_CODEC_FLAG_GLOBAL_HEADER);
    av.FFmpegError.throwIfError(await encoder.open2(codec, null), 'opening the encoder of sound');
    const packet = new av.Packet();
    packet.alloc();
    disposal.push(() => packet.free());
    const packets: EncodedPacket[] = [];
    const drain = async (): Promise<void> => {
      while ((await encoder.receivePacket(packet)) >= 0) {
        const timeS = Number(packet.pts) / madeSoundRate;
        if (timeS >= 0 && packet.data !== null) {
          const data = Uint8Array.from(packet.data);
          packets.push(new EncodedPacket(data, 'key', timeS, blockSamples / madeSoundRate));
        }
        packet.unref();
      }
    };
    for (let at = 0; at + blockSamples <= samples.length; at += blockSamples) {
      const block = Buffer.from(samples.slice(at, at + blockSamples).buffer);
      const frame = av.Frame.fromAudioBuffer(block, {
        ...{ format: av.AV_SAMPLE_FMT_FLTP, nbSamples: blockSamples, sampleRate: madeSoundRate },
        ...{ channelLayout: av.AV_CHANNEL_LAYOUT_MONO, pts: BigInt(at) },
        timeBase: new av.Rational(1, madeSoundRate),
      });
      await encoder.sendFrame(frame);
      frame.free();
      await drain();
    }
    await encoder.sendFrame(null);
    await drain();
    return { packets, description: Uint8Array.from(encoder.extraData ?? []) };
  } finally {
    await disposeOf(disposal);
  }
}

/** A floor of hiss with a short, bright burst at each time given, as a strike sounds from some metres away. */
export function strikesAt(seconds: number, strikes: readonly { atS: number; loud: number }[]): Float32Array {
  const sound = Float32Array.from(
    { length: seconds * madeSoundRate },
    (_, k) => 0.002 * Math.sin(k * k * 0.37),
  );
  for (const { atS, loud } of strikes) {
    for (let k = 0; k < 0.02 * madeSoundRate; k += 1) {
      const t = k / madeSoundRate;
      const tone = Math.sin(2 * Math.PI * 3_100 * t) + 0.6 * Math.sin(2 * Math.PI * 4_700 * t);
      const at = Math.round(atS * madeSoundRate) + k;
      sound[at] = (sound[at] ?? 0) + (loud / 2) * tone * Math.exp(-t / 0.004);
    }
  }
  return sound;
}
