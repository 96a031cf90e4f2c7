import { seededRandom } from '@ballfirst/numbers/seeded-random';

export const soundRate = 48_000;

/** Way of sound in a second at about 20 degrees Celsius, mm: 343.2 m/s (from memory). */
const soundMmPerS = 343_200;

/** When a strike is heard at a phone that stands `distanceMm` away, s. */
export const heardAtS = (impactS: number, distanceMm: number): number => impactS + distanceMm / soundMmPerS;

/**
 * The sound of a clip as a phone on a range takes it down, one channel of 16 bits: a light wind, a voice far off, and one
 * strike as a burst of a few thousand hertz that dies away within hundredths of a second. The same seed, the same sound.
 *
 * @param heardS when the strike reaches the phone, s
 */
export function paintSound(durationS: number, heardS: number, seed: number): Int16Array {
  const random = seededRandom(seed);
  const samples = new Int16Array(Math.round(durationS * soundRate));
  let wind = 0;
  for (let k = 0; k < samples.length; k += 1) {
    const t = k / soundRate;
    // A sum that leaks is deep noise, as wind is.
    wind = 0.995 * wind + 0.02 * (2 * random() - 1);
    const voice = 0.01 * Math.sin(2 * Math.PI * 210 * t) * Math.max(0, Math.sin(2 * Math.PI * 1.7 * t));
    const since = t - heardS;
    const struck =
      since < 0
        ? 0
        : 0.5 *
          Math.exp(-since / 0.0045) *
          (Math.sin(2 * Math.PI * 2_900 * since) + 0.5 * Math.sin(2 * Math.PI * 5_200 * since)) *
          (0.8 + 0.4 * random());
    const hiss = 0.0015 * (2 * random() - 1);
    samples[k] = Math.round(32_000 * Math.max(-1, Math.min(1, 0.1 * wind + voice + hiss + struck)));
  }
  return samples;
}
