import type { Reading } from '@ballfirst/swing/measurement';
import type { SeenSwing } from './seen-swing.ts';

/** How often the 95 % interval of a measurement holds its true value, and on which side it misses. */
export type Coverage = {
  readonly key: string;
  readonly unit: string;
  readonly n: number;
  readonly covered: number;
  /** The true value lies above the interval, below it. */
  readonly above: number;
  readonly below: number;
  readonly medianU: number;
};

const z95 = 1.959964;
/** A count of frames has few values and no normal errors: its interval is the whole range, checked apart. */
export const countsFrames: ReadonlySet<string> = new Set(['tempo-ratio']);

/** Readings with their true values, where there is one. */
export const checkable = (swings: readonly SeenSwing[]) =>
  swings.flatMap(({ readings, truth, yawDeg }) =>
    readings.flatMap((reading) => {
      const real = truth[reading.key];
      return real === undefined || countsFrames.has(reading.key) ? [] : [{ reading, real, yawDeg }];
    }),
  );

/** Coverage of every measurement that has a true value, over all swings given. */
export function coverageOf(
  swings: readonly SeenSwing[],
  doubt: (reading: Reading) => number = ({ u }) => u,
): readonly Coverage[] {
  const found = new Map<string, { unit: string; above: number; below: number; readonly us: number[] }>();
  for (const { reading, real } of checkable(swings)) {
    const one = found.get(reading.key) ?? { unit: reading.unit, above: 0, below: 0, us: [] };
    const u = doubt(reading);
    if (real - reading.value > z95 * u) one.above += 1;
    if (reading.value - real > z95 * u) one.below += 1;
    one.us.push(u);
    found.set(reading.key, one);
  }
  return [...found].map(([key, { unit, above, below, us }]) => ({
    key,
    unit,
    n: us.length,
    covered: 1 - (above + below) / us.length,
    above: above / us.length,
    below: below / us.length,
    medianU: us.sort((a, b) => a - b)[Math.floor(us.length / 2)] ?? Number.NaN,
  }));
}

/** Share of all intervals together that hold the truth. */
export function coveredTogether(swings: readonly SeenSwing[]): number {
  const all = coverageOf(swings);
  const n = all.reduce((sum, one) => sum + one.n, 0);
  return all.reduce((sum, one) => sum + one.covered * one.n, 0) / n;
}
