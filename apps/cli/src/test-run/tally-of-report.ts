import type { Tally } from './tally.ts';
import type { Report } from './tally-reporter.ts';

/**
 * @param report undefined when the run ended without writing one
 * @param expected projects that must hold at least one test
 * @param exitCode of vitest: it knows of failures that no test shows (a set-up that broke)
 */
export function tallyOfReport(
  report: Report | undefined,
  expected: readonly string[],
  exitCode: number,
): Tally {
  if (report === undefined) {
    return { passed: 0, failed: 1, skipped: 0, reasons: ['failed: the run ended without a result'] };
  }
  const counts = Object.values(report.projects);
  const count = (kind: 'passed' | 'failed' | 'skipped') => counts.reduce((sum, each) => sum + each[kind], 0);
  const empty = expected.filter((name) => report.projects[name] === undefined);
  const shown = count('failed') + report.brokenOutside + empty.length;
  return {
    passed: count('passed'),
    failed: shown === 0 && exitCode !== 0 ? 1 : shown,
    skipped: count('skipped'),
    reasons: [
      ...empty.map((name) => `failed: there are no tests of ${name}`),
      ...report.skips.map(({ name, why }) => `skipped: ${name}: ${why}`),
    ],
  };
}
