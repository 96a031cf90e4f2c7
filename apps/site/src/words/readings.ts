import type { Reply } from '@ballfirst/contracts/client';
import { reviewWords } from './review.ts';

export type Reading = Reply<'saveMarks'>['evidence']['readings'][number];

const units = { mm: ' mm', deg: '°', percent: ' %', ratio: '' } as const;

/** A value with its doubt (one standard uncertainty): "−58 ± 22 mm". */
export const valueInWords = ({ value, u, unit }: Pick<Reading, 'value' | 'u' | 'unit'>): string => {
  const places = unit === 'ratio' ? 2 : 0;
  const figure = value.toFixed(places).replace('-', '−');
  return `${Number(value.toFixed(places)) === 0 ? (0).toFixed(places) : figure} ± ${u.toFixed(places)}${units[unit]}`;
};

/** Never surer than 99 in a hundred: a figure of a picture is no certainty. */
const percent = (share: number): number => Math.min(99, Math.round(share * 100));

/** Where a reading lies against its band, with how sure that is. */
export const againstBand = (reading: Reading): string => {
  const { band, probabilityBelow, probabilityAbove } = reading;
  if (band === null) return reviewWords.noBand;
  if (probabilityBelow >= 0.5) return reviewWords.below(percent(probabilityBelow));
  if (probabilityAbove >= 0.5) return reviewWords.above(percent(probabilityAbove));
  return reviewWords.inside;
};

export const bandInWords = ({ band, unit }: Reading): string | null => {
  if (band === null) return null;
  const edge = (it: number) => `${String(it).replace('-', '−')}${units[unit]}`;
  if (band.low !== null && band.high !== null)
    return `${edge(band.low)} to ${edge(band.high)} (${band.label})`;
  if (band.low !== null) return `${edge(band.low)} or more (${band.label})`;
  return band.high === null ? null : `${edge(band.high)} or less (${band.label})`;
};

/** Findings first: the surer one is that a reading lies outside its band, the higher it stands. */
export const byFinding = (readings: readonly Reading[]): Reading[] => {
  const outside = (one: Reading) =>
    one.band === null ? -1 : Math.max(one.probabilityBelow, one.probabilityAbove);
  return [...readings].sort((a, b) => outside(b) - outside(a));
};
