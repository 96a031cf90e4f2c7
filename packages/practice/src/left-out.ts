import type { Drill, Rung } from '@ballfirst/library/types';
import { whyNot } from './drill-fit.ts';
import { ladderWith } from './ladder-at.ts';
import type { Means } from './means.ts';

export type LeftOut = { readonly what: string; readonly why: string };

type Among = { readonly means: Means; readonly library: { readonly drills: readonly Drill[] } };

/** The drills of a list that fit the student, in its order, and why the others do not. */
export const drillsThatFit = (
  ids: readonly string[],
  { means, library }: Among,
): { readonly fitting: readonly Drill[]; readonly leftOut: readonly LeftOut[] } => {
  const fitting: Drill[] = [];
  const leftOut: LeftOut[] = [];
  for (const id of ids) {
    const drill = library.drills.find((one) => one.id === id);
    if (drill === undefined) continue;
    const noStep = ladderWith(drill, means.place, means.balls).length === 0;
    const why = whyNot(drill, means) ?? (noStep ? 'Needs balls.' : null);
    if (why === null) fitting.push(drill);
    else leftOut.push({ what: drill.name, why });
  }
  return { fitting, leftOut };
};

/** Drills that fit and were not taken. */
export const notTaken = (fitting: readonly Drill[], taken: readonly Drill[]): readonly LeftOut[] =>
  fitting
    .filter((drill) => !taken.includes(drill))
    .map(({ name }) => ({ what: name, why: 'One drill at a time; this one promises less.' }));

/** A day of rest after full swings; what strikes no ball may be done almost daily. Common practice, no source. */
export const mostDays = (ladders: readonly (readonly Rung[])[]): number =>
  ladders.some((ladder) => ladder.some((rung) => rung.ball)) ? 4 : 6;
