/** What a clip may cost: bytes of the file, seconds, pixels of one frame and of its side, number of frames, and what we make of it. */
export type ClipLimits = {
  readonly maxBytes: number;
  readonly maxSeconds: number;
  readonly maxPixels: number;
  readonly maxSidePx: number;
  readonly maxFrames: number;
  /** Long side of the rendition in pixels; a smaller clip keeps its size. */
  readonly renditionLongSidePx: number;
  readonly posterLongSidePx: number;
};

/** One swing from a phone: up to 4096 x 2304, 30 s, 240 frames a second. */
export const defaultLimits: ClipLimits = {
  maxBytes: 1024 ** 3,
  maxSeconds: 30,
  maxPixels: 4096 * 2304,
  maxSidePx: 8192,
  maxFrames: 7200,
  renditionLongSidePx: 1920,
  posterLongSidePx: 720,
};
