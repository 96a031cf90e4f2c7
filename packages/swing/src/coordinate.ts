import type { FeltSources } from '@ballfirst/numbers/propagate-sources';

/** A level or an upward coordinate in mm, linear in the error sources of its swing. */
export type Coordinate = FeltSources & { readonly value: number };

/** What clicking alone adds: standard uncertainty, from the effects of all sources. */
export function clickedDoubt(effects: Float64Array, clicked: readonly boolean[]): number {
  let variance = 0;
  effects.forEach((effect, i) => {
    if (clicked[i] === true) variance += effect * effect;
  });
  return Math.sqrt(variance);
}
