const mebibyte = 2 ** 20;
/** A cut costs at most one chunk: on one bar of signal that is a small one. */
export const firstChunkBytes = mebibyte;
export const largeChunkBytes = 8 * mebibyte;
/** From this rate on a large chunk takes some four seconds. */
const fastBytesPerS = 2 * mebibyte;

/**
 * How large the next chunk should be, by how long the last one took.
 *
 * @param bytes length of the last chunk
 * @param tookMs from its first byte to its acknowledgement, ms
 */
export const nextChunkBytes = (bytes: number, tookMs: number): number =>
  tookMs > 0 && (bytes * 1000) / tookMs >= fastBytesPerS ? largeChunkBytes : firstChunkBytes;
