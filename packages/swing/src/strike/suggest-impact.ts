import type { Onset } from './strike-sound.ts';
import type { SwingWindow } from './swing-window.ts';

/** Where impact is looked for first, by ear. Never a fact: a coach confirms it on the picture. */
export type ImpactSuggestion = {
  readonly frame: number;
  readonly impactMs: number;
  readonly uMs: number;
  /** The doubt in whole frames, at least 1. */
  readonly uFrames: number;
  readonly confidence: 'likely' | 'possible' | 'unsure';
  /** Other sounds like a strike, nearly as loud or where the picture moves. */
  readonly others: number;
};

/** Another sound counts against it when it is at most so much softer. */
const rivalDb = 10;
/** So far outside the window a strike may lie: the picture moves most just before and after it. */
const nearS = 0.25;
/** How far a strike close by stands out: common practice, no source. */
const clearDb = 20;

/**
 * Chooses the strike among the sounds heard: the loudest of those at which the picture moves, else the loudest of all.
 * `likely`: clear, within the swing, no rival; `possible`: one of these fails; `unsure`: more fail.
 *
 * @param onsets as `strikeOnsets` gives them
 * @param window as `swingWindow` gives it, or null
 * @param timesS when each frame is shown, seconds, rising
 * @returns null where nothing was heard, or nothing that the clip shows
 */
export function suggestImpact(
  onsets: readonly Onset[],
  window: SwingWindow | null,
  timesS: readonly number[],
): ImpactSuggestion | null {
  const lastMs = (timesS.at(-1) ?? 0) * 1000;
  const heard = onsets.filter(({ timeMs }) => timeMs <= lastMs).toSorted((a, b) => b.peakDb - a.peakDb);
  const isInside = ({ timeMs }: Onset): boolean =>
    window !== null && timeMs / 1000 >= window.fromS - nearS && timeMs / 1000 <= window.toS + nearS;
  const chosen = heard.find(isInside) ?? heard[0];
  if (chosen === undefined) return null;
  const others = heard.filter((one) => one !== chosen && one.peakDb >= chosen.peakDb - rivalDb).length;
  const frame = nearestFrame(timesS, chosen.timeMs / 1000);
  const spanMs = lastMs - (timesS[0] ?? 0) * 1000;
  const frameMs = timesS.length > 1 ? spanMs / (timesS.length - 1) : 1000;
  const failing = [chosen.risesDb < clearDb, !isInside(chosen), others > 0].filter(Boolean).length;
  return {
    frame,
    impactMs: Math.round(chosen.timeMs * 10) / 10,
    uMs: Math.round(chosen.uMs * 10) / 10,
    uFrames: Math.max(1, Math.round(chosen.uMs / frameMs)),
    confidence: failing === 0 ? 'likely' : failing === 1 ? 'possible' : 'unsure',
    others,
  };
}

/** The frame that is shown nearest to a time. */
export function nearestFrame(timesS: readonly number[], timeS: number): number {
  let best = 0;
  for (const [frame, at] of timesS.entries()) {
    if (Math.abs(at - timeS) < Math.abs((timesS[best] ?? 0) - timeS)) best = frame;
  }
  return best;
}
