import type { FeltSources } from '@ballfirst/numbers/propagate-sources';

/** A level or an upward coordinate in mm, linear in the error sources of its swing. */
export type Coordinate = FeltSources & { readonly value: number };

/** What clicking alone adds: standard uncertainty, from the effects of all sources. */
export function clickedDoubt({ sources, effects }: FeltSources, clicked: readonly boolean[]): number {
  let variance = 0;
  for (let i = 0; i < effects.length; i += 1)
    if (clicked[sources[i] ?? -1] === true) variance += (effects[i] ?? 0) ** 2;
  return Math.sqrt(variance);
}
