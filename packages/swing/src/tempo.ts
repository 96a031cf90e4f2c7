import type { Picture, Position } from './marks/marks.ts';
import type { PlacedMarks } from './marks/placed-marks.ts';
import type { Measurement } from './measurement.ts';

export type FrameCounts = {
  /** Seconds from the last still frame of address to the top. */
  readonly backS: number;
  /** Seconds from the top to impact. */
  readonly downS: number;
  /** Seconds between two frames. */
  readonly frameS: number;
};

export type Tempo = { readonly ratio: number; readonly low: number; readonly high: number };

/**
 * Time back over time down, with the interval its frame rate allows: each count may be one frame off.
 *
 * @throws RangeError when a time is not positive, or the way down is not longer than one frame
 * @source counting; checked against the intervals 24/8 at 30 to 192/64 at 240 frames a second
 * @example tempoOf({ backS: 0.8, downS: 8 / 30, frameS: 1 / 30 }) // 3, from 2.56 to 3.57
 */
export function tempoOf({ backS, downS, frameS }: FrameCounts): Tempo {
  if (!(backS > 0 && downS > 0)) throw new RangeError('The moments of the swing are not in their order.');
  if (!(frameS > 0 && downS > 1.5 * frameS)) throw new RangeError('The way down is as short as a frame.');
  return {
    ratio: backS / downS,
    low: Math.max(0, backS - frameS) / (downS + frameS),
    high: (backS + frameS) / (downS - frameS),
  };
}

/** The moments that the tempo is counted between. */
export const tempoPositions = ['address', 'top', 'impact'] as const satisfies readonly Position[];

/**
 * The tempo of the frames that carry the marks. What frame is the last still one is the coach's eye: a proxy.
 *
 * @param marks - with a mark at address, top and impact that was placed on its own frame
 * @returns the doubt is that of an even distribution over the interval (JCGM 100:2008, 4.3.7)
 * @throws RangeError when a moment carries no mark, or the moments are not in their order
 */
export function measureTempo(marks: PlacedMarks, picture: Picture): Measurement {
  const [address = 0, top = 0, impact = 0] = tempoPositions.map((position) => {
    const frame = marks.frameOf(position);
    if (frame === undefined) throw new RangeError(`no mark at ${position}.`);
    return frame;
  });
  const at = (frame: number) => picture.frameTimesS[frame] ?? Number.NaN;
  const { ratio, low, high } = tempoOf({
    backS: at(top) - at(address),
    downS: at(impact) - at(top),
    frameS: (at(impact) - at(address)) / (impact - address),
  });
  const u = (high - low) / Math.sqrt(12);
  return {
    key: 'tempo-ratio',
    unit: 'ratio',
    value: ratio,
    u,
    uStatistical: u,
    interval: { low, high },
    proxy: true,
    positions: tempoPositions,
  };
}
