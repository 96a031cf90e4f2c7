/** What the browser could read of a video before it is sent. `light` is null where no picture could be decoded. */
export type ClipLook = {
  readonly durationS: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly fps: number;
  /** Mean brightness of a frame from the middle, 0 black .. 1 white. */
  readonly light: number | null;
};

/** What may be wrong. The first four are asked about before the upload begins; a low rate is only told. */
export type Doubt = 'too-short' | 'too-long' | 'too-dark' | 'not-portrait' | 'low-rate';

// Common practice, no source: set-up to finish takes about two seconds; the service takes clips up to half a minute;
// an evening range films at about a quarter of full white.
const shortestS = 1;
const longestS = 30;
const darkest = 0.12;
/** Under so many frames a second the club moves a foot and more between two of them near the ball. */
const goodFps = 100;

/**
 * What is wrong with a clip, the gravest first; none when all is well.
 * @example judgeClip({ durationS: 2.2, widthPx: 720, heightPx: 1280, fps: 120, light: 0.5 }) // []
 */
export const judgeClip = (look: ClipLook): Doubt[] => {
  const doubts: Doubt[] = [];
  if (look.durationS < shortestS) doubts.push('too-short');
  if (look.durationS > longestS) doubts.push('too-long');
  if (look.light !== null && look.light < darkest) doubts.push('too-dark');
  if (look.widthPx > look.heightPx) doubts.push('not-portrait');
  if (look.fps < goodFps) doubts.push('low-rate');
  return doubts;
};

/** Whether the student is asked before the upload begins. */
export const asksFirst = (doubts: readonly Doubt[]): boolean => doubts.some((doubt) => doubt !== 'low-rate');
