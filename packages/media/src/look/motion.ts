/** Brightness of a picture, a byte a pixel (ITU-R BT.601: 0.299, 0.587, 0.114; in 256ths). */
export function lumaOf(rgb: Buffer): Uint8Array {
  const luma = new Uint8Array(rgb.length / 3);
  for (let pixel = 0; pixel < luma.length; pixel += 1) {
    const at = pixel * 3;
    luma[pixel] = (77 * (rgb[at] ?? 0) + 150 * (rgb[at + 1] ?? 0) + 29 * (rgb[at + 2] ?? 0)) >> 8;
  }
  return luma;
}

/**
 * How much a picture differs from the one before: the mean difference of brightness beyond what the whole picture
 * changes by, so that a cloud or the camera's own exposure does not count.
 *
 * @returns levels of 0 to 255
 */
export function differenceOf(before: Uint8Array, now: Uint8Array): number {
  let change = 0;
  for (let pixel = 0; pixel < now.length; pixel += 1) change += (now[pixel] ?? 0) - (before[pixel] ?? 0);
  const mean = change / Math.max(1, now.length);
  let sum = 0;
  for (let pixel = 0; pixel < now.length; pixel += 1) {
    sum += Math.abs((now[pixel] ?? 0) - (before[pixel] ?? 0) - mean);
  }
  return sum / Math.max(1, now.length);
}
