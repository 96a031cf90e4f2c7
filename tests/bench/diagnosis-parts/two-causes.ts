import { opposed, type PlantedCause } from '@ballfirst/demo/golfer/golfer-causes';
import type { FaultId } from '@ballfirst/library/types';
import { firstPassFor } from '@ballfirst/swing/marks/first-pass';
import { candidates, lookedFor } from './ranking.ts';
import { seenSwing } from './seen-swing.ts';

export type TwoCauses = {
  readonly n: number;
  /** One of the two stands first. */
  readonly oneFirst: number;
  /** Both stand among the first three. */
  readonly bothInThree: number;
};

const pairsOf = (fault: FaultId) => {
  const able = candidates(fault, firstPassFor(fault, 'full').view);
  return able.flatMap((a, i) =>
    able
      .slice(i + 1)
      .filter((b) => !opposed(a, b))
      .map((b): readonly [PlantedCause, PlantedCause] => [a, b]),
  );
};

/** Swings with two causes of one fault at once, every pair that one body can do, so many each. */
export function twoCauses(from: number, each: number): TwoCauses {
  let [n, oneFirst, bothInThree] = [0, 0, 0];
  for (const fault of ['fat', 'shank'] as const) {
    const { view } = firstPassFor(fault, 'full');
    for (const [i, pair] of pairsOf(fault).entries()) {
      for (let turn = 0; turn < each; turn += 1) {
        const swing = seenSwing(from + 1000 * i + turn, view, pair);
        const ids = lookedFor(fault, swing).map(({ causeId }) => causeId);
        n += 1;
        if (pair.some((cause) => cause === ids[0])) oneFirst += 1;
        if (pair.every((cause) => ids.slice(0, 3).includes(cause))) bothInThree += 1;
      }
    }
  }
  return { n, oneFirst: oneFirst / n, bothInThree: bothInThree / n };
}
