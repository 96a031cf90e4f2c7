import { loadNodeAv } from '../../../packages/media/src/node-av/load-node-av.ts';
import { openNodeAvRendition } from '../../../packages/media/src/node-av/node-av-rendition.ts';
import { bits, bright, dark, leftPx, squarePx, topPx } from './number-in-picture.ts';

export const widthPx = 720;
export const heightPx = 1280;

/** A moving pattern, so that no frame is a copy of the one before, with the number of the frame over it. */
const paint = (frame: number): Buffer => {
  const picture = Buffer.alloc((widthPx * heightPx * 3) / 2, 128);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1)
      picture[y * widthPx + x] = 70 + (((x + frame * 3) >> 3) & 31) + (((y * 3) >> 4) & 63);
  }
  for (let bit = 0; bit < bits; bit += 1) {
    const value = (frame >> bit) & 1 ? bright : dark;
    for (let y = topPx; y < topPx + squarePx; y += 1) {
      const from = y * widthPx + leftPx + bit * squarePx;
      picture.fill(value, from, from + squarePx);
    }
  }
  return picture;
};

/** Writes a clip of numbered frames, `fps` a second, with the encoder of the renditions. */
export async function writeNumberedClip(path: string, frames: number, fps: number): Promise<void> {
  const av = await loadNodeAv();
  const disposal: (() => unknown)[] = [];
  const ticks = 12_000;
  const timeBase = new av.Rational(1, ticks);
  try {
    const output = await openNodeAvRendition(
      av,
      {
        ...{ sourcePath: '', renditionPath: path, posterPath: '', posterWidthPx: 0, posterHeightPx: 0 },
        ...{ widthPx, heightPx, posterFrame: 0, rotationDeg: 0, flipped: false, maxPixels: 0 },
        keepSound: false,
        onFrame: () => {},
      },
      { timeBase, rate: new av.Rational(fps, 1) },
      disposal,
    );
    for (let frame = 0; frame < frames; frame += 1) {
      const pts = BigInt(Math.round((frame / fps) * ticks));
      const size = { width: widthPx, height: heightPx, format: av.AV_PIX_FMT_YUV420P, timeBase, pts };
      const picture = av.Frame.fromVideoBuffer(paint(frame), size);
      await output.write(picture);
      picture.free();
    }
    await output.end();
  } finally {
    for (const dispose of disposal.reverse()) await dispose();
  }
}
