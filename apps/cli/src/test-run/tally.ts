/** What a run of tests came to. */
export type Tally = {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
  /** One line for each skipped test or group of tests. */
  readonly reasons: readonly string[];
};

export const emptyTally: Tally = { passed: 0, failed: 0, skipped: 0, reasons: [] };

/** All of them together. */
export function sumTallies(tallies: readonly Tally[]): Tally {
  return tallies.reduce(
    (sum, each) => ({
      passed: sum.passed + each.passed,
      failed: sum.failed + each.failed,
      skipped: sum.skipped + each.skipped,
      reasons: [...sum.reasons, ...each.reasons],
    }),
    emptyTally,
  );
}

/** The last line of every run. */
export function closingLine(tally: Tally): string {
  return `${tally.passed} passed, ${tally.failed} failed, ${tally.skipped} skipped`;
}

/**
 * 0 only when something was tested and nothing failed.
 */
export function exitCodeOf(tally: Tally): number {
  return tally.failed === 0 && tally.passed + tally.skipped > 0 ? 0 : 1;
}
