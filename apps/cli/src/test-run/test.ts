import { tmpdir } from 'node:os';
import { explainFailure } from '../explain-failure.ts';
import { say, survivesLostTerminal } from '../say.ts';
import { listenForStop, type StopRequest } from '../start/stop-request.ts';
import { countJourneys } from './count-journeys.ts';
import { findBrowser } from './find-browser.ts';
import { runVitest } from './run-vitest.ts';
import { closingLine, emptyTally, exitCodeOf, sumTallies, type Tally } from './tally.ts';
import { tallyOfReport } from './tally-of-report.ts';
import { readTestArguments, type TestArguments } from './test-arguments.ts';
import { startTestServer } from './test-server.ts';

/**
 * `npm test`: every kind of test, on one PostgreSQL of its own; the journeys last, alone on the machine.
 *
 * @returns exit code: 0 only when something was tested and nothing failed
 */
export async function test(root: string, args: readonly string[]): Promise<number> {
  survivesLostTerminal();
  const wanted = readTestArguments(args);
  const stop = listenForStop();
  const tallies = [await testWithDatabase(root, wanted, stop)];
  if (wanted.projects.includes('journeys') && !stop.isAsked()) {
    tallies.push(await testJourneys(root, wanted.filters, stop));
  }
  const tally = sumTallies(tallies);
  for (const reason of tally.reasons) say(reason);
  say(closingLine(tally));
  return stop.isAsked() ? 1 : exitCodeOf(tally);
}

async function testWithDatabase(root: string, wanted: TestArguments, stop: StopRequest): Promise<Tally> {
  const projects = wanted.projects.filter((project) => project !== 'journeys');
  if (projects.length === 0) return sumTallies([]);
  const given = process.env.TEST_DATABASE_SUPERUSER_URL;
  const needsServer = projects.some((project) => project !== 'unit') && !given;
  try {
    const server = needsServer ? await startTestServer(root, wanted.postgresBin) : undefined;
    const env = server === undefined ? {} : { TEST_DATABASE_SUPERUSER_URL: server.superuserUrl };
    const run = runVitest(root, projects, wanted.filters, env, stop);
    const { report, exitCode } = await run.finally(() => server?.stop());
    return tallyOfReport(report, wanted.filters.length > 0 ? [] : projects, exitCode);
  } catch (error) {
    throw explainFailure(error, tmpdir());
  }
}

async function testJourneys(root: string, filters: readonly string[], stop: StopRequest): Promise<Tally> {
  const browser = findBrowser(process.env);
  const count = countJourneys(root, filters);
  if (browser !== undefined && count > 0) {
    const { report, exitCode } = await runVitest(
      root,
      ['journeys'],
      filters,
      { CHROMIUM_PATH: browser },
      stop,
    );
    return tallyOfReport(report, ['journeys'], exitCode);
  }
  if (count === 0 && filters.length > 0) return emptyTally;
  if (count === 0) return { ...emptyTally, failed: 1, reasons: ['failed: there are no journeys'] };
  const why = 'there is no Chromium or Chrome on this machine (CHROME_PATH names one)';
  return { ...emptyTally, skipped: count, reasons: [`skipped: ${count} journeys: ${why}`] };
}
