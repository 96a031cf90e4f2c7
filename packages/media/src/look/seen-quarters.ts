import { type Disposal, disposeOf } from '../node-av/disposal.ts';
import { loadNodeAv } from '../node-av/load-node-av.ts';
import { openNodeAvInput } from '../node-av/node-av-input.ts';

/** Mean brightness (0 to 255) of the quarters of a clip's first frame as it is stored: for tests of its turn. */
export async function seenQuarters(
  path: string,
): Promise<Record<'upperLeft' | 'upperRight' | 'lowerLeft' | 'lowerRight', number>> {
  const av = await loadNodeAv();
  const disposal: Disposal = [];
  try {
    const input = await openNodeAvInput(av, path, 1e8, disposal);
    const [packet, frame] = [new av.Packet(), new av.Frame()];
    packet.alloc();
    frame.alloc();
    disposal.push(
      () => packet.free(),
      () => frame.free(),
    );
    for (let got = -1; got < 0; got = await input.decoder.receiveFrame(frame)) {
      const read = await input.format.readFrame(packet);
      await input.decoder.sendPacket(read < 0 ? null : packet);
      packet.unref();
    }
    const luma = frame.data?.[0];
    const stride = frame.linesize[0];
    if (luma === undefined || stride === undefined) throw new Error('No picture came out');
    const mean = (right: number, lower: number): number => {
      let sum = 0;
      let count = 0;
      for (let y = 0; y < frame.height / 2; y += 4) {
        for (let x = 0; x < frame.width / 2; x += 4) {
          sum += luma[(y + (lower * frame.height) / 2) * stride + x + (right * frame.width) / 2] ?? 0;
          count += 1;
        }
      }
      return sum / count;
    };
    return { upperLeft: mean(0, 0), upperRight: mean(1, 0), lowerLeft: mean(0, 1), lowerRight: mean(1, 1) };
  } finally {
    await disposeOf(disposal);
  }
}
