/** Pause before the n-th start in a row (n = 1 first), doubling from half a second to half a minute. */
export function backOffMs(inARow: number): number {
  return Math.min(500 * 2 ** Math.max(0, inARow - 1), 30_000);
}
