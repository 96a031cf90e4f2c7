/**
 * Mean brightness of a picture, 0 black .. 1 white, by the luma weights of ITU-R BT.709 on its stored values.
 *
 * @param rgba - four bytes a pixel, as a canvas gives them
 * @throws RangeError when there is no pixel
 * @example lightOf(new Uint8ClampedArray([255, 255, 255, 255])) // 1
 */
export const lightOf = (rgba: Uint8ClampedArray): number => {
  const pixels = Math.floor(rgba.length / 4);
  if (pixels === 0) throw new RangeError('A picture has a pixel at least.');
  let sum = 0;
  for (let at = 0; at < pixels * 4; at += 4) {
    sum += 0.2126 * (rgba[at] ?? 0) + 0.7152 * (rgba[at + 1] ?? 0) + 0.0722 * (rgba[at + 2] ?? 0);
  }
  return sum / (pixels * 255);
};
