import { jpegOf, type RgbPicture } from '../jpeg.ts';

export const stripPictures = 12;

/** Indices of so many of the times that lie evenly from one instant to another, each once, rising. */
export function evenly(
  timesS: readonly number[],
  fromS: number,
  toS: number,
  count = stripPictures,
): number[] {
  const chosen = new Set<number>();
  for (let k = 0; k < count; k += 1) {
    const wanted = fromS + ((toS - fromS) * k) / Math.max(1, count - 1);
    let best = 0;
    for (const [index, timeS] of timesS.entries()) {
      if (Math.abs(timeS - wanted) < Math.abs((timesS[best] ?? 0) - wanted)) best = index;
    }
    chosen.add(best);
  }
  return [...chosen].toSorted((a, b) => a - b);
}

/** Pictures of one size side by side. @throws RangeError without any, or with two sizes */
export function sideBySide(pictures: readonly RgbPicture[]): RgbPicture {
  const [first] = pictures;
  if (first === undefined) throw new RangeError('A strip of no pictures');
  const { widthPx, heightPx } = first;
  if (pictures.some((one) => one.widthPx !== widthPx || one.heightPx !== heightPx)) {
    throw new RangeError('Pictures of a strip must be of one size');
  }
  const row = widthPx * 3;
  const rgb = Buffer.alloc(row * pictures.length * heightPx);
  for (const [index, picture] of pictures.entries()) {
    for (let y = 0; y < heightPx; y += 1) {
      picture.rgb.copy(rgb, (y * pictures.length + index) * row, y * row, (y + 1) * row);
    }
  }
  return { widthPx: widthPx * pictures.length, heightPx, rgb };
}

/** A small strip of film. */
export const stripJpeg = (pictures: readonly RgbPicture[]): Promise<Buffer> =>
  jpegOf(sideBySide(pictures), 72);
