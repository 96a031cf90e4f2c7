import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { describe, expect, it } from 'vitest';
import { bandEnergy } from './band-energy.ts';
import { speedOfSoundMps, strikeOnsets, usualHearing } from './strike-sound.ts';

const rate = 16_000;
const random = seededRandom(7);
const noise = () => 2 * random() - 1;

/** Sound of some seconds over a floor of noise. */
const quiet = (seconds: number, floor = 0.002): Float32Array =>
  Float32Array.from({ length: seconds * rate }, () => floor * noise());
/** A strike as a burst of 2 to 5 kHz that dies away within 20 ms; heard at `atS`. */
const strike = (sound: Float32Array, atS: number, loud = 0.5): void => {
  for (let k = 0; k < 0.02 * rate; k += 1) {
    const t = k / rate;
    const tone = Math.sin(2 * Math.PI * 3_100 * t) + 0.6 * Math.sin(2 * Math.PI * 4_700 * t) + 0.3 * noise();
    const at = Math.round(atS * rate) + k;
    sound[at] = (sound[at] ?? 0) + (loud / 2) * tone * Math.exp(-t / 0.004);
  }
};
const travelMs = (1000 * usualHearing.distanceM) / speedOfSoundMps(usualHearing.airC);

describe('strikeOnsets', () => {
  it.each([0.6, 1.234, 2.9])('finds one strike heard at %f s, carried back to the ball', (atS) => {
    const sound = quiet(3.5);
    strike(sound, atS);
    const [first, ...others] = strikeOnsets(sound, rate);
    expect(others).toEqual([]);
    // Within 1.5 ms: a step of one millisecond and a half.
    expect(Math.abs((first?.timeMs ?? 0) - (1000 * atS - travelMs))).toBeLessThan(1.5);
    expect(first?.uMs).toBeGreaterThan(usualHearing.uDistanceM / 0.35);
  });

  it('finds it in the noise of a range: steady wind, rumble of a mower, voices', () => {
    const sound = quiet(3, 0.02);
    for (let k = 0; k < sound.length; k += 1) {
      const t = k / rate;
      const voice = 0.1 * Math.sin(2 * Math.PI * 180 * t) * (1 + Math.sin(2 * Math.PI * 4 * t));
      sound[k] = (sound[k] ?? 0) + 0.3 * Math.sin(2 * Math.PI * 60 * t) + voice;
    }
    strike(sound, 1.5, 0.5);
    const [first] = strikeOnsets(sound, rate);
    expect(Math.abs((first?.timeMs ?? 0) - (1500 - travelMs))).toBeLessThan(2);
  });

  it('gives several strikes, the loudest first, and an echo as part of its strike', () => {
    const sound = quiet(4);
    strike(sound, 0.8, 0.1);
    strike(sound, 2, 0.8);
    strike(sound, 2.05, 0.2);
    strike(sound, 3.2, 0.2);
    const times = strikeOnsets(sound, rate).map(({ timeMs }) => Math.round((timeMs + travelMs) / 10) / 100);
    expect(times).toEqual([2, 3.2, 0.8]);
  });

  it('hears nothing in silence, in noise, in a hum, or in a wind that sets in and stays', () => {
    expect(strikeOnsets(new Float32Array(2 * rate), rate)).toEqual([]);
    expect(strikeOnsets(quiet(3, 0.1), rate)).toEqual([]);
    expect(
      strikeOnsets(
        Float32Array.from({ length: 2 * rate }, (_, k) => Math.sin(k / 9)),
        rate,
      ),
    ).toEqual([]);
    const gust = Float32Array.from({ length: 3 * rate }, (_, k) => (k > rate ? 0.3 : 0.003) * noise());
    expect(strikeOnsets(gust, rate)).toEqual([]);
    expect(strikeOnsets(new Float32Array(0), rate)).toEqual([]);
  });

  it('doubts more the less is known of the distance', () => {
    const sound = quiet(2);
    strike(sound, 1);
    const u = (uDistanceM: number) => strikeOnsets(sound, rate, { ...usualHearing, uDistanceM })[0]?.uMs ?? 0;
    expect(u(2)).toBeGreaterThan(u(0.2));
    // 2 m at 343.4 m/s are 5.82 ms, joined with 4 ms and a step of one: by the law of propagation.
    expect(u(2)).toBeCloseTo(Math.hypot(4, 5.824, 0.289), 2);
  });

  it('refuses nonsense', () => {
    expect(() => strikeOnsets(quiet(1), 1)).toThrow(RangeError);
    expect(() => strikeOnsets(quiet(1), rate, { ...usualHearing, distanceM: -1 })).toThrow(RangeError);
    expect(() => speedOfSoundMps(99)).toThrow(RangeError);
  });
});

it('sound is as fast as measured: 343.2 m/s at 20 degrees, 331.5 at 0 (Bohn 1988, table 1; from memory)', () => {
  expect(Math.abs(speedOfSoundMps(20) - 343.2)).toBeLessThan(0.5);
  expect(Math.abs(speedOfSoundMps(0) - 331.5)).toBeLessThan(0.5);
});

it('energy above the cut passes and below it does not: a second-order slope falls by 12 dB an octave', () => {
  const level = (hz: number): number => {
    const tone = Float32Array.from({ length: rate }, (_, k) => Math.sin((2 * Math.PI * hz * k) / rate));
    const energy = bandEnergy(tone, rate).slice(500);
    return 10 * Math.log10(2 * (energy.reduce((sum, value) => sum + value, 0) / energy.length));
  };
  expect(level(5_000)).toBeCloseTo(0, 0);
  expect(level(1_200)).toBeCloseTo(-3, 0);
  expect(level(150) - level(300)).toBeCloseTo(-12, 0);
});
