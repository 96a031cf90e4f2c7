import { describe, expect, it } from 'vitest';
import { closingLine, emptyTally, exitCodeOf, sumTallies } from './tally.ts';
import { tallyOfReport } from './tally-of-report.ts';

const tally = (passed: number, failed: number, skipped: number) => ({
  ...emptyTally,
  passed,
  failed,
  skipped,
});

describe('closing line', () => {
  it('sums the runs', () => {
    const sum = sumTallies([tally(3, 0, 1), { ...tally(4, 2, 1), reasons: ['skipped: x: y'] }]);
    expect(closingLine(sum)).toBe('7 passed, 2 failed, 2 skipped');
    expect(sum.reasons).toEqual(['skipped: x: y']);
  });

  it.each([
    [tally(1, 0, 0), 0],
    [tally(1, 1, 0), 1],
    [tally(0, 0, 2), 0],
    [emptyTally, 1],
  ])('judges %o', (given, code) => {
    expect(exitCodeOf(given)).toBe(code);
  });
});

describe('tallyOfReport', () => {
  const report = {
    projects: { unit: { passed: 2, failed: 0, skipped: 1 }, schema: { passed: 1, failed: 1, skipped: 0 } },
    skips: [{ name: 'a > b', why: 'no browser' }],
    brokenOutside: 1,
  };

  it('counts tests, and what broke outside of them', () => {
    expect(tallyOfReport(report, ['unit', 'schema'], 1)).toEqual({
      passed: 3,
      failed: 2,
      skipped: 1,
      reasons: ['skipped: a > b: no browser'],
    });
  });

  it('counts a project without any test as failed', () => {
    expect(tallyOfReport({ ...report, brokenOutside: 0 }, ['unit', 'schema', 'integration'], 1).failed).toBe(
      2,
    );
  });

  it('never shows success when the run failed or left no report', () => {
    const good = { projects: { unit: { passed: 2, failed: 0, skipped: 0 } }, skips: [], brokenOutside: 0 };
    expect(tallyOfReport(good, ['unit'], 0).failed).toBe(0);
    expect(tallyOfReport(good, ['unit'], 1).failed).toBe(1);
    expect(tallyOfReport(undefined, ['unit'], 0).failed).toBe(1);
  });
});
