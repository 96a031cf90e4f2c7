import type { RankedCause } from './rank.ts';
import { standsOut } from './stands-out.ts';

/**
 * The cause to fix first, of a ranking: the first that stands out. Null: nothing stands out.
 *
 * @example firstCause(rank(input))?.causeId ?? 'nothing stands out'
 */
export const firstCause = (ranked: readonly RankedCause[]): RankedCause | null =>
  ranked.find(standsOut) ?? null;
