import type { Cause } from '@ballfirst/library/types';
import { choleskyOf, inverseCholesky, solveCholesky } from '@ballfirst/numbers/cholesky';
import { clip } from '@ballfirst/numbers/clip';
import type { Evidence } from './evidence.ts';
import { heardOf, type ReadSign } from './read-sign.ts';
import type { Shown } from './shown.ts';
import { ratioLimit } from './weights.ts';

/** Correlation between players of signs that show the same, beyond the errors they share. Common practice, no source. */
const betweenPlayers = 0.5;

type Placed = ReadSign & { readonly at: number };

/** Between players: how two signs of one cause scatter together. */
const betweenPlayersOf = (one: Placed, other: Placed): number => {
  if (one.at === other.at) return one.sd ** 2;
  if (one.sign.shares === undefined || one.sign.shares !== other.sign.shares) return 0;
  return betweenPlayers * one.towards * other.towards * one.sd * other.sd;
};

/**
 * The signs of one cause, freed of what the other readings tell of the errors they share: how far each then stands from
 * half-way to where the cause moves it, and how they still scatter together.
 *
 * @source conditional mean and covariance of a normal distribution by its precision: r + Q^-1 (P r), Q^-1
 */
function freed({ values, precision, away, pull }: Shown, own: readonly Placed[]) {
  const k = own.length;
  const block = Float64Array.from(
    own.flatMap((one) => own.map((other) => precision[one.at * values.length + other.at] ?? 0)),
  );
  const lower = choleskyOf(block, k);
  const scatter = inverseCholesky(lower, k);
  const corrected = solveCholesky(
    lower,
    Float64Array.from(own, ({ at }) => pull[at] ?? 0),
  );
  own.forEach((one, i) => {
    corrected[i] = (corrected[i] ?? 0) + heardOf(one) - one.shift / 2 - (away[one.at] ?? 0);
    own.forEach((other, j) => {
      const assumed = i === j ? (values[one.at]?.sd ?? 0) ** 2 : 0;
      scatter[i * k + j] = (scatter[i * k + j] ?? 0) + betweenPlayersOf(one, other) - assumed;
    });
  });
  return { corrected, scatter };
}

/**
 * The lines of the signs: the weight of each times how far it stands past half-way, freed of shared errors. A sign that would
 * count against its own direction only echoes the others: it has no line.
 */
function linesOf(shown: Shown, own: readonly Placed[]): readonly number[] {
  const { corrected, scatter } = freed(shown, own);
  const lines = own.map(() => 0);
  let left = own.map((_, i) => i);
  while (left.length > 0) {
    const part = Float64Array.from(left.flatMap((i) => left.map((j) => scatter[i * own.length + j] ?? 0)));
    const shifts = Float64Array.from(left, (i) => own[i]?.shift ?? 0);
    const weights = solveCholesky(choleskyOf(part, left.length), shifts);
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
  const own: Placed[] = [];
  for (const sign of cause.signs) {
    const at = shown.place.get(sign.key);
    if (at === undefined) continue;
    const found = shown.values[at]?.signs.find((one) => one.sign === sign);
    if (found !== undefined && found.shift !== 0) own.push({ ...found, at });
  }
  if (own.length === 0) return [];
  const lines = linesOf(shown, own);
  const sum = lines.reduce((total, line) => total + line, 0);
  const most = own.reduce((total, { atMost }) => total + atMost, 0);
  const share = sum === 0 ? 1 : clip(sum, -ratioLimit * own.length, most) / sum;
  return own.map(({ sign, reading, sd, atMost }, i) => ({
    sign,
    logRatio: (lines[i] ?? 0) * share,
    weight: (atMost / ratioLimit) * (sd ** 2 / (sd ** 2 + reading.u ** 2)),
    reading,
    answer: null,
  }));
}
