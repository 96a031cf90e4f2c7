import { bandEnergy } from './band-energy.ts';

/** Where the microphone stood and how surely that is known, in metres; the air's temperature in degrees Celsius. */
export type Hearing = { readonly distanceM: number; readonly uDistanceM: number; readonly airC: number };

/** A sound like a strike: when it left the ball, its standard uncertainty, and how far it stands out, in decibels. */
export type Onset = {
  readonly timeMs: number;
  readonly uMs: number;
  readonly risesDb: number;
  readonly peakDb: number;
};

/** A phone on a stand, 3 to 5 m away (common practice, no source), on a mild day. */
export const usualHearing: Hearing = { distanceM: 4, uDistanceM: 0.6, airC: 20 };

/** Phones write sound and picture some milliseconds apart: common practice, no source. */
const uSyncMs = 4;

/** A strike rises at least so far above what was heard just before: common practice, no source. */
const risesAtLeastDb = 12;
/** Two onsets closer than this are one strike with its echo. */
const apartMs = 80;

/**
 * Speed of sound in dry air: 331.3 m/s at 0 degrees, rising by 0.606 m/s a degree (linear approximation; 343.4 m/s at 20,
 * against 343.2 in Bohn 1988, J. Audio Eng. Soc. 36, 223).
 *
 * @param airC degrees Celsius, -40 to 60
 * @throws RangeError outside
 * @example speedOfSoundMps(20) // 343.42
 */
export function speedOfSoundMps(airC: number): number {
  if (!(airC >= -40 && airC <= 60)) throw new RangeError(`${airC} degrees Celsius is no weather for golf.`);
  return 331.3 + 0.606 * airC;
}

/**
 * Sounds like a strike: sudden, in the band from 1.2 kHz up where wind and voices are weak. The energy in steps of one
 * millisecond must rise by 12 dB within 5 ms over the quarter before it; the instant is where it first passes half the
 * way up, carried back by the time that sound needs from ball to phone. (Energy-based onset detection as in Bello et al.
 * 2005, IEEE Trans. Speech Audio Process. 13, 1035, section III; thresholds: common practice, no source.)
 *
 * @param samples one channel, -1 to 1, from time zero of the clip on
 * @param rate samples a second, 4,000 to 192,000
 * @returns the loudest first; empty where nothing is heard
 * @throws RangeError on a rate or a distance that cannot be
 */
export function strikeOnsets(
  samples: Float32Array,
  rate: number,
  hearing: Hearing = usualHearing,
): readonly Onset[] {
  const { distanceM, uDistanceM, airC } = hearing;
  if (!(distanceM >= 0 && distanceM <= 100 && uDistanceM >= 0))
    throw new RangeError(`A phone ${distanceM} m away.`);
  const speed = speedOfSoundMps(airC);
  const energy = bandEnergy(samples, rate);
  const levels = Array.from(energy, (value) => 10 * Math.log10(value + 1e-10));
  const found: Onset[] = [];
  for (const step of risesOf(levels)) {
    const peak = peakAfter(levels, step);
    const floor = floorBefore(levels, step);
    // Where half the way from floor to peak is passed, between two steps.
    const half = (peak + floor) / 2;
    let at = step;
    while (at > 0 && (levels[at - 1] ?? half) >= half) at -= 1;
    while ((levels[at] ?? peak) < half) at += 1;
    const [below, above] = [levels[at - 1] ?? floor, levels[at] ?? peak];
    const share = above > below ? (half - below) / (above - below) : 1;
    const heardMs = at - 1 + Math.min(1, Math.max(0, share)) + 0.5;
    const timeMs = heardMs - (1000 * distanceM) / speed;
    if (timeMs < 0) continue;
    const uMs = Math.hypot(uSyncMs, (1000 * uDistanceM) / speed, 1 / Math.sqrt(12));
    found.push({ timeMs, uMs, risesDb: peak - floor, peakDb: peak });
  }
  return found.toSorted((a, b) => b.peakDb - a.peakDb);
}

/** Steps at which a strike begins: the steepest of each neighbourhood. */
function risesOf(levels: readonly number[]): readonly number[] {
  const sudden = [...levels.keys()].filter(
    (step) => peakAfter(levels, step) - (levels[step - 1] ?? Number.POSITIVE_INFINITY) >= risesAtLeastDb / 2,
  );
  const steps = sudden
    .map((step) => ({ step, rise: peakAfter(levels, step) - floorBefore(levels, step) }))
    .filter(({ rise, step }) => rise >= risesAtLeastDb && fallsAfter(levels, step))
    .toSorted((a, b) => b.rise - a.rise || a.step - b.step);
  const kept: number[] = [];
  for (const { step } of steps) {
    if (kept.every((other) => Math.abs(other - step) > apartMs)) kept.push(step);
  }
  return kept;
}

const peakAfter = (levels: readonly number[], step: number): number =>
  Math.max(...levels.slice(step, step + 5));

/** What was heard in the quarter of a second before, as the loudest tenth of it; the first steps have nothing before. */
function floorBefore(levels: readonly number[], step: number): number {
  const before = levels.slice(Math.max(0, step - 250), Math.max(0, step - 3)).toSorted((a, b) => a - b);
  return before.length < 30 ? Number.POSITIVE_INFINITY : (before[Math.floor(before.length * 0.9)] ?? 0);
}

/** A strike is over soon; wind, a mower or a voice that sets in is not. */
function fallsAfter(levels: readonly number[], step: number): boolean {
  const later = levels.slice(step + 60, step + 160);
  const middle = later.toSorted((a, b) => a - b)[later.length >> 1];
  return middle === undefined || middle <= peakAfter(levels, step) - risesAtLeastDb / 2;
}
