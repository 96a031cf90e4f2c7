import { viewOfCause } from '@ballfirst/demo/golfer/draw-swing';
import { golferCauses, type PlantedCause } from '@ballfirst/demo/golfer/golfer-causes';
import { firstCause } from '@ballfirst/diagnosis/first-cause';
import { rank } from '@ballfirst/diagnosis/rank';
import { causeById, causes } from '@ballfirst/library/causes';
import { type FaultId, faults } from '@ballfirst/library/types';
import { firstPassFor } from '@ballfirst/swing/marks/first-pass';
import type { View } from '@ballfirst/swing/marks/marks';
import { oracleOf } from './oracle.ts';
import type { SeenSwing } from './seen-swing.ts';

export const plantedCauses = golferCauses.filter((cause): cause is PlantedCause => cause !== 'none');
export type ByCause = ReadonlyMap<PlantedCause, readonly SeenSwing[]>;

const measuredSigns = (id: string, view: View) =>
  causeById(id).signs.filter(
    (sign) => sign.kind === 'measured' && (sign.view === view || sign.view === 'either'),
  ).length;

/** Planted causes that bring a fault about and have a sign in the view it is filmed from. */
export const candidates = (fault: FaultId, view: View): readonly PlantedCause[] =>
  plantedCauses.filter(
    (id) =>
      causeById(id).brings[fault] !== undefined && viewOfCause(id) === view && measuredSigns(id, view) > 0,
  );

/** The causes of a fault as they are ranked; only those that were looked for: no mark can speak for the others. */
export const lookedFor = (fault: FaultId, { readings }: SeenSwing) =>
  rank({ fault, readings, observations: [], causes }).filter(({ factors }) => factors.length > 0);

/** How often one cause, planted, comes first and among the first two, and what stood first instead. */
export type CauseRow = {
  readonly cause: string;
  readonly signs: number;
  readonly n: number;
  readonly first: number;
  readonly firstTwo: number;
  readonly oracle: number;
  readonly instead: readonly (readonly [cause: string, share: number])[];
};
export type FaultTable = { readonly fault: FaultId; readonly view: View; readonly rows: readonly CauseRow[] };

/** Each fault with two planted causes at least, against Bayes with the generator's own parameters. */
export function rankingTables(tested: ByCause, training: ByCause): readonly FaultTable[] {
  return faults.flatMap((fault): FaultTable[] => {
    const { view } = firstPassFor(fault, 'full');
    const able = candidates(fault, view);
    if (able.length < 2) return [];
    const oracle = oracleOf(new Map(able.map((cause) => [cause, training.get(cause) ?? []])));
    return [{ fault, view, rows: able.map((cause) => rowOf(fault, view, cause, tested, oracle)) }];
  });
}

function rowOf(
  fault: FaultId,
  view: View,
  cause: PlantedCause,
  tested: ByCause,
  oracle: (swing: SeenSwing) => string,
): CauseRow {
  const swings = tested.get(cause) ?? [];
  const ranked = swings.map((swing) => lookedFor(fault, swing).map(({ causeId }) => causeId));
  const firsts = new Map<string, number>();
  for (const [first = 'none'] of ranked) firsts.set(first, (firsts.get(first) ?? 0) + 1);
  const n = swings.length;
  return {
    cause,
    signs: measuredSigns(cause, view),
    n,
    first: (firsts.get(cause) ?? 0) / n,
    firstTwo: ranked.filter((ids) => ids.slice(0, 2).includes(cause)).length / n,
    oracle: swings.filter((swing) => oracle(swing) === cause).length / n,
    instead: [...firsts]
      .filter(([id]) => id !== cause)
      .map(([id, count]) => [id, count / n] as const)
      .sort(([, a], [, b]) => b - a),
  };
}

/** How many sound swings are blamed: each is read for one of the faults filmed from its view, in turn. */
export function blamedAmong(view: View, swings: readonly SeenSwing[]) {
  const filmed = faults.filter((fault) => firstPassFor(fault, 'full').view === view);
  const blamed = swings.filter(
    (swing, turn) => firstCause(lookedFor(filmed[turn % filmed.length] ?? 'fat', swing)) !== null,
  );
  return { n: swings.length, blamed: blamed.length };
}
