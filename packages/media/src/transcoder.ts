/** What a decoder and encoder is asked to do with one checked clip. Paths are ours; sizes are of the upright picture. */
export type TranscodeJob = {
  readonly sourcePath: string;
  readonly renditionPath: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Clockwise turn that makes the stored picture upright: 0, 90, 180 or 270, then mirrored left to right if `flipped`. */
  readonly rotationDeg: number;
  readonly flipped: boolean;
  /** Whether the first sound track is taken over as it is; it must be AAC, which every browser plays. */
  readonly keepSound: boolean;
  readonly maxPixels: number;
  readonly onFrame: (count: number) => void;
  readonly signal?: AbortSignal;
};

/** Pictures of a rendition, small: of every frame, or of its key frames alone, which costs a tenth. */
export type PicturesJob = {
  readonly path: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly keyFramesOnly: boolean;
  /** Each picture in the order shown: red, green, blue a pixel, row by row, 8 bits. */
  readonly take: (rgb: Buffer) => void;
  readonly signal?: AbortSignal;
};

/** One picture of a rendition: of the frame that is shown at `timeS`, where another begins `nextS` later. */
export type PictureJob = {
  readonly path: string;
  readonly timeS: number;
  readonly nextS: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly signal?: AbortSignal;
};

/**
 * One way to work on video. All follow one contract (`transcoder.contract.test.ts`): a rendition is H.264 yuv420p, a key
 * frame every ten, no B-frames, index first, no metadata, upright, the times of the frames kept, AAC sound as it came.
 */
export type Transcoder = {
  readonly name: string;
  /** Null when it can run here, else the reason why not. */
  readonly missing: () => Promise<string | null>;
  /** @returns how many frames were decoded and written; @throws Refused, or Error for trouble of our own */
  readonly transcode: (job: TranscodeJob) => Promise<number>;
  readonly pictures: (job: PicturesJob) => Promise<void>;
  /** @returns 8-bit red, green, blue a pixel */
  readonly picture: (job: PictureJob) => Promise<Buffer>;
  /** The first sound track as one channel at `soundRate`, from time zero of the clip on; null where there is none. */
  readonly sound: (path: string, signal?: AbortSignal) => Promise<Float32Array | null>;
};

/** Samples a second of the sound that is listened to: a strike is heard below 8 kHz. */
export const soundRate = 16_000;

/** Brings sound to one channel at `soundRate`; what lies before time zero is cut off, silence before the first is added. */
export const soundFilters = [
  ['aresample', `${soundRate}:async=1:first_pts=0`],
  ['aformat', 'sample_fmts=flt:channel_layouts=mono'],
] as const;

/** Encoder settings shared by all: steps of ten frames let a browser go one frame back quickly. */
export const x264Settings = 'keyint=10:min-keyint=10:scenecut=0:bframes=0:threads=2';
export const x264Quality = { preset: 'veryfast', crf: '23' } as const;
