/** How many orders of n values have each number of inversions, 0..n(n-1)/2, as shares of all n! orders. */
function inversionShares(n: number): readonly number[] {
  let shares = [1];
  for (let size = 2; size <= n; size += 1) {
    const next = new Array<number>(shares.length + size - 1).fill(0);
    for (const [inversions, share] of shares.entries()) {
      for (let moved = 0; moved < size; moved += 1) {
        next[inversions + moved] = (next[inversions + moved] ?? 0) + share / size;
      }
    }
    shares = next;
  }
  return shares;
}

/**
 * Exact chance that Kendall's S is at least as far from zero in either direction when nothing changes, without ties.
 *
 * @param n - values, 2..60
 * @param s - concordant less discordant pairs
 * @returns two-sided probability
 * @throws RangeError when n is not in 2..60 or s cannot come from n values
 * @source Kendall 1938, Biometrika 30:81: counting orders by their inversions
 * @example kendallTwoSided(5, 10) // 0.0167
 */
export function kendallTwoSided(n: number, s: number): number {
  const most = (n * (n - 1)) / 2;
  if (!Number.isInteger(n) || n < 2 || n > 60) throw new RangeError('The exact count takes 2 to 60 values.');
  if (!Number.isInteger(s) || Math.abs(s) > most)
    throw new RangeError(`S lies between ${-most} and ${most}.`);
  let sum = 0;
  inversionShares(n).forEach((share, inversions) => {
    if (Math.abs(most - 2 * inversions) >= Math.abs(s)) sum += share;
  });
  return Math.min(1, sum);
}

/** The smallest S whose two-sided chance is at most `risk`, or null when none is rare enough. */
export function kendallCritical(n: number, risk: number): number | null {
  const most = (n * (n - 1)) / 2;
  for (let s = most % 2; s <= most; s += 2) if (kendallTwoSided(n, s) <= risk) return s;
  return null;
}
