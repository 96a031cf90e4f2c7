import type { SeenSwing } from './seen-swing.ts';

/** How often the 95 % interval of a measurement holds its true value. */
export type Coverage = {
  readonly key: string;
  readonly n: number;
  readonly covered: number;
  readonly medianU: number;
};

const z95 = 1.959964;
// A count of frames has few values and no normal errors: its interval is stated as one.
const notNormal: ReadonlySet<string> = new Set(['tempo-ratio']);

/** Coverage of every measurement that has a true value, over all swings given. */
export function coverageOf(swings: readonly SeenSwing[]): readonly Coverage[] {
  const found = new Map<string, { inside: number; readonly us: number[] }>();
  for (const { readings, truth } of swings) {
    for (const { key, value, u } of readings) {
      const real = truth[key];
      if (real === undefined || notNormal.has(key)) continue;
      const one = found.get(key) ?? { inside: 0, us: [] };
      if (Math.abs(value - real) <= z95 * u) one.inside += 1;
      one.us.push(u);
      found.set(key, one);
    }
  }
  return [...found].map(([key, { inside, us }]) => ({
    key,
    n: us.length,
    covered: inside / us.length,
    medianU: us.sort((a, b) => a - b)[Math.floor(us.length / 2)] ?? Number.NaN,
  }));
}
