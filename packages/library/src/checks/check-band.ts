import type { BandRow } from '../types.ts';

/** What is wrong with a band, as sentences; none is well. */
export const checkBand = ({ key, low, high, source }: BandRow): readonly string[] => {
  const problems: string[] = [];
  if (low === null && high === null) problems.push(`"${key}" is a band without an edge`);
  if (low !== null && high !== null && low >= high) problems.push(`"${key}" is a band upside down`);
  if (source.trim() === '') problems.push(`"${key}" names no source`);
  return problems;
};
