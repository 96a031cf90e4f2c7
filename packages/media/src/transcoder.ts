/** What a decoder and encoder is asked to do with one checked clip. Paths are ours; sizes are of the upright picture. */
export type TranscodeJob = {
  readonly sourcePath: string;
  readonly renditionPath: string;
  readonly posterPath: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly posterWidthPx: number;
  readonly posterHeightPx: number;
  /** Which frame becomes the poster, counted from 0. */
  readonly posterFrame: number;
  /** Clockwise turn that makes the stored picture upright: 0, 90, 180 or 270, then mirrored left to right if `flipped`. */
  readonly rotationDeg: number;
  readonly flipped: boolean;
  readonly maxPixels: number;
  readonly onFrame: (count: number) => void;
  readonly signal?: AbortSignal;
};

/**
 * One way to make the rendition and the poster. All follow one contract (`transcoder.contract.test.ts`): H.264 yuv420p,
 * a key frame every ten, no B-frames, index first, no metadata, upright, the times of the frames kept, no sound.
 */
export type Transcoder = {
  readonly name: string;
  /** Null when it can run here, else the reason why not. */
  readonly missing: () => Promise<string | null>;
  /** @returns how many frames were decoded and written; @throws Refused, or Error for trouble of our own */
  readonly transcode: (job: TranscodeJob) => Promise<number>;
};

/** Encoder settings shared by all: steps of ten frames let a browser go one frame back quickly. */
export const x264Settings = 'keyint=10:min-keyint=10:scenecut=0:bframes=0:threads=2';
export const x264Quality = { preset: 'veryfast', crf: '23' } as const;
