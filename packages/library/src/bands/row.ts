import type { BandRow } from '../types.ts';

export const irons = ['5-iron', '6-iron', '7-iron', '8-iron', '9-iron', 'wedge'] as const;
export const woods = ['driver', 'fairway', 'hybrid'] as const;
/** Swings with a top. */
export const long = ['three-quarter', 'full'] as const;
export const short = ['rehearsal', 'hip-high'] as const;

export type Range = readonly [low: number | null, high: number | null];
type Where = Partial<Omit<BandRow, 'key' | 'low' | 'high'>>;

/** A band for any club and swing length, common practice, unless said otherwise. */
export const row = (key: string, [low, high]: Range, where: Where = {}): BandRow => ({
  clubs: 'any',
  lengths: 'any',
  label: 'common practice',
  source: 'common practice, no source',
  ...where,
  key,
  low,
  high,
});
