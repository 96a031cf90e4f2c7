import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { signal } from '../processes.ts';
import type { StopRequest } from '../start/stop-request.ts';
import type { Report } from './tally-reporter.ts';

export type VitestRun = { readonly exitCode: number; readonly report: Report | undefined };

/**
 * Runs vitest on some projects in a process group of its own, and leaves nothing of that group behind.
 *
 * @param env added to a clean environment
 * @param stop ends the run early
 */
export async function runVitest(
  root: string,
  projects: readonly string[],
  filters: readonly string[],
  env: Readonly<Record<string, string>>,
  stop: StopRequest,
): Promise<VitestRun> {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-tally-'));
  const tally = join(folder, 'tally.json');
  const dist = join(root, 'apps', 'cli', 'dist');
  const flags = projects.flatMap((project) => ['--project', project]);
  const reporters = ['--reporter=default', `--reporter=${join(dist, 'tally-reporter.mjs')}`];
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const watch = pathToFileURL(join(dist, 'watch-parent.mjs')).href;
  const child = spawn(
    process.execPath,
    ['--import', watch, vitest, 'run', ...flags, ...reporters, ...filters],
    {
      cwd: root,
      env: { ...cleanEnv(process.env), ...env, BALLFIRST_TALLY_FILE: tally },
      detached: true,
      stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    },
  );
  const { pid } = child;
  const exit = new Promise<number>((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (code) => resolve(code ?? 1));
  });
  void stop.asked.then(() => child.kill('SIGTERM'));
  stop.onImpatience(() => child.kill('SIGKILL'));
  const exitCode = await exit;
  if (pid !== undefined) signal(-pid, 'SIGKILL');
  const report = existsSync(tally) ? (JSON.parse(readFileSync(tally, 'utf8')) as Report) : undefined;
  rmSync(folder, { recursive: true, force: true });
  return { exitCode, report };
}

/** A test must not depend on how the service of the same terminal is set up. */
export function cleanEnv(env: Readonly<Record<string, string | undefined>>): Record<string, string> {
  const kept: Record<string, string> = {};
  const ours =
    /^(BALLFIRST_|npm_|(QUEUE_)?DATABASE_|MEDIA_|MAIL_|SMTP_)|^(PORT|HOST|PUBLIC_URL|NODE_ENV|CLOCK_OFFSET_FILE)$/;
  for (const [name, value] of Object.entries(env)) {
    if (value !== undefined && !ours.test(name)) kept[name] = value;
  }
  return kept;
}
