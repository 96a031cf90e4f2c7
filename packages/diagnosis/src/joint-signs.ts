import type { Cause } from '@ballfirst/library/types';
import { choleskyOf, inverseCholesky, solveCholesky } from '@ballfirst/numbers/cholesky';
import { clip } from '@ballfirst/numbers/clip';
import type { Evidence } from './evidence.ts';
import { heardOf, type ReadSign } from './read-sign.ts';
import type { Shown } from './shown.ts';
import { ratioLimit } from './weights.ts';

/** Correlation between players of signs that show the same, beyond the errors they share. Common practice, no source. */
const betweenPlayers = 0.5;

/** The signs of one cause, and where their readings stand among all. */
type Own = { readonly signs: readonly ReadSign[]; readonly places: readonly number[] };

/** Between players: how two signs of one cause scatter together. */
const betweenPlayersOf = (one: ReadSign, other: ReadSign): number => {
  if (one === other) return one.sd ** 2;
  if (one.sign.shares === undefined || one.sign.shares !== other.sign.shares) return 0;
  return betweenPlayers * one.towards * other.towards * one.sd * other.sd;
};

/** The rows and columns of a few places, out of n rows of n. */
function blockOf(matrix: Float64Array, n: number, places: readonly number[]): Float64Array {
  const k = places.length;
  const block = new Float64Array(k * k);
  for (let i = 0; i < k; i += 1) {
    const row = (places[i] ?? 0) * n;
    for (let j = 0; j < k; j += 1) block[i * k + j] = matrix[row + (places[j] ?? 0)] ?? 0;
  }
  return block;
}

/**
 * The signs of one cause, freed of what the other readings tell of the errors they share: how far each then stands from
 * half-way to where the cause moves it, and how they still scatter together.
 *
 * @source conditional mean and covariance of a normal distribution by its precision: r + Q^-1 (P r), Q^-1
 */
function freed({ values, precision, away, pull }: Shown, { signs, places }: Own) {
  const k = signs.length;
  const lower = choleskyOf(blockOf(precision, values.length, places), k);
  const scatter = inverseCholesky(lower, k);
  const pulled = new Float64Array(k);
  for (let i = 0; i < k; i += 1) pulled[i] = pull[places[i] ?? 0] ?? 0;
  const corrected = solveCholesky(lower, pulled);
  for (let i = 0; i < k; i += 1) {
    const one = signs[i];
    const at = places[i] ?? 0;
    if (one === undefined) continue;
    corrected[i] = (corrected[i] ?? 0) + heardOf(one) - one.shift / 2 - (away[at] ?? 0);
    for (let j = 0; j < k; j += 1) {
      const other = signs[j] ?? one;
      const assumed = i === j ? (values[at]?.sd ?? 0) ** 2 : 0;
      scatter[i * k + j] = (scatter[i * k + j] ?? 0) + betweenPlayersOf(one, other) - assumed;
    }
  }
  return { corrected, scatter };
}

/**
 * The lines of the signs: the weight of each times how far it stands past half-way, freed of shared errors. A sign that would
 * count against its own direction only echoes the others: it has no line.
 */
function linesOf(shown: Shown, own: Own): readonly number[] {
  const { corrected, scatter } = freed(shown, own);
  const { signs } = own;
  const lines = signs.map(() => 0);
  let left = signs.map((_, i) => i);
  while (left.length > 0) {
    const lower = choleskyOf(blockOf(scatter, signs.length, left), left.length);
    const shifts = new Float64Array(left.length);
    for (let row = 0; row < left.length; row += 1) shifts[row] = signs[left[row] ?? 0]?.shift ?? 0;
    const weights = solveCholesky(lower, shifts);
    const counts = left.map((_, row) => (shifts[row] ?? 0) * (weights[row] ?? 0));
    const least = Math.min(...counts);
    if (least >= 0) {
      left.forEach((i, row) => {
        lines[i] = (weights[row] ?? 0) * (corrected[i] ?? 0);
      });
      return lines;
    }
    left = left.filter((_, row) => counts[row] !== least);
  }
  return lines;
}

/**
 * What the measured signs of a cause say together: one likelihood ratio of all readings of the swing, whose errors go
 * together by clicks, clothing, turn and scale of the camera. Readings that are no sign of this cause help to tell such an
 * error from a true departure. It is a sum over the signs, a line for each.
 *
 * @param cause - one of the library that the swing was shown to
 * @returns one piece of evidence for each sign that was read; together within twenty to one for each sign, or what a sign
 * that only supports may say
 * @throws RangeError when a reading or a figure of the library is no number
 * @source ratio of two normal densities with a common covariance (Fisher 1936): shift' V^-1 (value - middle - shift / 2); for
 * one sign alone that of graded-sign.ts
 */
export function jointSigns(cause: Cause, shown: Shown): readonly Evidence[] {
  const signs: ReadSign[] = [];
  const places: number[] = [];
  for (const sign of cause.signs) {
    const at = shown.place.get(sign.key);
    if (at === undefined) continue;
    const found = shown.values[at]?.signs.find((one) => one.sign === sign);
    if (found === undefined || found.shift === 0) continue;
    signs.push(found);
    places.push(at);
  }
  if (signs.length === 0) return [];
  const lines = linesOf(shown, { signs, places });
  const sum = lines.reduce((total, line) => total + line, 0);
  const most = signs.reduce((total, { atMost }) => total + atMost, 0);
  const share = sum === 0 ? 1 : clip(sum, -ratioLimit * signs.length, most) / sum;
  return signs.map(({ sign, reading, sd, atMost }, i) => ({
    sign,
    logRatio: (lines[i] ?? 0) * share,
    weight: (atMost / ratioLimit) * (sd ** 2 / (sd ** 2 + reading.u ** 2)),
    reading,
    answer: null,
  }));
}
