/** The number of a frame is burnt into its picture as a row of bright and dark squares: the lowest bit first. */
export const bits = 12;
export const squarePx = 44;
export const leftPx = 48;
export const topPx = 600;

/** How bright the squares are, and what lies between. */
export const bright = 235;
export const dark = 16;
export const middle = 126;

/** The number read back from the pixels of a row of squares (RGBA), or null where a square is neither bright nor dark. */
export const numberIn = (pixels: Uint8ClampedArray, widthPx: number): number | null => {
  let number = 0;
  for (let bit = 0; bit < bits; bit += 1) {
    const x = bit * squarePx + squarePx / 2;
    const seen = pixels[((squarePx / 2) * widthPx + x) * 4] ?? middle;
    if (Math.abs(seen - middle) < 50) return null;
    if (seen > middle) number += 2 ** bit;
  }
  return number;
};
