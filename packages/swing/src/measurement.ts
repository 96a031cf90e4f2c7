import type { FeltSources } from '@ballfirst/numbers/propagate-sources';
import type { Position } from './marks/marks.ts';

export type Unit = 'mm' | 'deg' | 'percent' | 'ratio';

/**
 * A number computed from marks. `value` in `unit`; `u` is its standard uncertainty (1 SD, same unit, all terms joined),
 * `uStatistical` the part that comes from clicking alone. `proxy` says that a 2-D picture shows it only indirectly.
 */
export type Measurement = {
  readonly key: string;
  readonly unit: Unit;
  readonly value: number;
  readonly u: number;
  readonly uStatistical: number;
  readonly proxy: boolean;
  readonly positions: readonly Position[];
  /** What 1 SD of each error source of the swing moves it, numbered alike in all measurements of one swing. */
  readonly felt?: FeltSources;
  /** The whole range the frame rate allows, where a count of frames sets it. */
  readonly interval?: { readonly low: number; readonly high: number };
};

/** The range a measurement should lie in. An absent edge is open. `label` says how far it may be trusted. */
export type Band = {
  readonly low: number | null;
  readonly high: number | null;
  readonly label: 'verified' | 'second-hand' | 'derived' | 'common practice' | 'from memory';
};

/** A measurement read against its band: how sure we are that the true value lies past each edge (0..1). */
export type Reading = Measurement & {
  readonly band: Band | null;
  readonly probabilityBelow: number;
  readonly probabilityAbove: number;
};

export type RefusedWhy =
  | 'marks-missing'
  | 'no-scale'
  | 'doubt-too-large'
  | 'wrong-view'
  | 'not-for-this-length'
  | 'moments-out-of-order';

/** Why a measurement could not be made; `words` name what is missing, for a coach. */
export type Refusal = { readonly key: string; readonly why: RefusedWhy; readonly words: string };
