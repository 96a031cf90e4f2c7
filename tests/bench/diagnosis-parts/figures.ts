import type { TruthResults } from './truth-results.ts';

export type TruthFigure = {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly n: number;
  readonly baseline?: string;
  readonly ratio?: number;
};

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** The figures a report keeps, of all that was found. */
export function figuresOf(results: TruthResults): readonly TruthFigure[] {
  const rows = results.coverage.flatMap((one) => one.rows);
  const least = Math.min(...rows.map(({ n }) => n));
  const covered = rows.map((row) => row.covered);
  const tails = rows.flatMap(({ above, below }) => [above, below]);
  const hipShift = rows.find(({ key }) => key === 'hip-shift-address-top');
  const ranked = results.ranking.flatMap((table) => table.rows);
  const n = sum(ranked.map((row) => row.n));
  const hits = sum(ranked.map((row) => row.first * row.n));
  const oracleHits = sum(ranked.map((row) => row.oracle * row.n));
  const share = (what: string, value: number, of: number): TruthFigure => ({
    what,
    value,
    unit: 'share',
    n: of,
  });
  const soundCount = sum(results.sound.map((one) => one.n));
  const { blamedForFat, twoCauses } = results;
  return [
    share('coverage-min', Math.min(...covered), least),
    share('coverage-max', Math.max(...covered), least),
    share('tail-min', Math.min(...tails), least),
    share('tail-max', Math.max(...tails), least),
    {
      ...share('first-vs-oracle', hits / n, n),
      baseline: `Bayes with the generator's own parameters: ${(oracleHits / n).toFixed(3)}`,
      ratio: hits / oracleHits,
    },
    share('first-two', sum(ranked.map((row) => row.firstTwo * row.n)) / n, n),
    share('false-first', sum(results.sound.map(({ blamed }) => blamed)) / soundCount, soundCount),
    share('false-first-fat', blamedForFat.blamed / blamedForFat.n, blamedForFat.n),
    share('one-of-two-first', twoCauses.oneFirst, twoCauses.n),
    share('both-of-two-in-three', twoCauses.bothInThree, twoCauses.n),
    { what: 'hip-shift-width-mm', value: hipShift?.medianU ?? Number.NaN, unit: 'mm', n: hipShift?.n ?? 0 },
  ];
}
