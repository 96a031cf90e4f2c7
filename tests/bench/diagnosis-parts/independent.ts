import { firstCause } from '@ballfirst/diagnosis/first-cause';
import type { View } from '@ballfirst/swing/marks/marks';
import { coveredTogether } from './coverage.ts';
import { blamedAmong, type FaultTable, lookedFor } from './ranking.ts';
import type { SeenSwing } from './seen-swing.ts';

/** A few figures of one set of seeds, as shares. */
export type Summary = {
  /** Sound swings, swings with a planted cause. */
  readonly sound: number;
  readonly planted: number;
  readonly covered: number;
  readonly first: number;
  readonly oracle: number;
  readonly firstTwo: number;
  readonly falseFirst: number;
  readonly falseFirstFat: number;
};

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** The figures of one set of seeds: so that those the bench has always used stand beside others that nobody has looked at. */
export function summaryOf(
  sound: ReadonlyMap<View, readonly SeenSwing[]>,
  ranking: readonly FaultTable[],
): Summary {
  const all = [...sound.values()].flat();
  const rows = ranking.flatMap((table) => table.rows);
  const n = sum(rows.map((row) => row.n));
  const share = (of: (row: (typeof rows)[number]) => number) => sum(rows.map((row) => of(row) * row.n)) / n;
  const blamed = sum([...sound].map(([view, swings]) => blamedAmong(view, swings).blamed));
  const front = sound.get('face-on') ?? [];
  const blamedForFat = front.filter((swing) => firstCause(lookedFor('fat', swing)) !== null).length;
  return {
    sound: all.length,
    planted: n,
    covered: coveredTogether(all),
    first: share((row) => row.first),
    oracle: share((row) => row.oracle),
    firstTwo: share((row) => row.firstTwo),
    falseFirst: blamed / all.length,
    falseFirstFat: blamedForFat / front.length,
  };
}
