export type Key = readonly [timeS: number, value: number];
/** Slopes at the two ends, units a second; an end without one is at rest. */
export type EndSlopes = { readonly first?: number; readonly last?: number };

/**
 * A smooth curve through keys that never overshoots between two of them: cubic pieces with limited slopes
 * (Fritsch and Carlson 1980), still before the first and after the last key.
 *
 * @param keys times in seconds, strictly rising, with their values in any unit
 * @param ends slopes to join another motion smoothly; they are kept as given, not limited
 * @returns the value at a time in seconds
 * @throws RangeError with fewer than two keys or times that do not rise
 */
export function keyedCurve(keys: readonly Key[], ends: EndSlopes = {}): (timeS: number) => number {
  if (keys.length < 2) throw new RangeError('A curve needs two keys');
  const slopes = chordSlopes(keys);
  const tangents = keys.map((_, i) => limitedTangent(slopes[i - 1], slopes[i]));
  if (ends.first !== undefined) tangents[0] = ends.first;
  if (ends.last !== undefined) tangents[keys.length - 1] = ends.last;
  return (timeS) => valueAt(keys, tangents, timeS);
}

function chordSlopes(keys: readonly Key[]): number[] {
  const slopes: number[] = [];
  let before: Key | undefined;
  for (const key of keys) {
    if (before !== undefined) {
      if (key[0] <= before[0]) throw new RangeError('Times of keys must rise');
      slopes.push((key[1] - before[1]) / (key[0] - before[0]));
    }
    before = key;
  }
  return slopes;
}

/** The harmonic mean of the two chord slopes; zero at an end or at a turning point. */
function limitedTangent(left: number | undefined, right: number | undefined): number {
  if (left === undefined || right === undefined || left * right <= 0) return 0;
  return (2 * left * right) / (left + right);
}

function valueAt(keys: readonly Key[], tangents: readonly number[], timeS: number): number {
  const after = keys.findIndex(([t]) => t > timeS);
  const from = keys[after - 1];
  const to = keys[after];
  if (to === undefined) return keys.at(-1)?.[1] ?? Number.NaN;
  if (from === undefined) return to[1];
  const span = to[0] - from[0];
  const s = (timeS - from[0]) / span;
  const leave = (tangents[after - 1] ?? 0) * span;
  const arrive = (tangents[after] ?? 0) * span;
  const rise = to[1] - from[1];
  return from[1] + leave * s + (3 * rise - 2 * leave - arrive) * s * s + (leave + arrive - 2 * rise) * s ** 3;
}
