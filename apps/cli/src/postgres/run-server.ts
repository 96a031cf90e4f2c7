import { type ChildProcess, spawn } from 'node:child_process';
import { closeSync, openSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDiskFullText } from '../explain-failure.ts';
import { signal } from '../processes.ts';
import { Sentence } from '../sentence.ts';
import { until } from '../until.ts';
import type { Cluster } from './initialise-cluster.ts';
import { parsePostmasterPid } from './postmaster-pid.ts';
import { runAs } from './run-as.ts';

export type Server = {
  readonly pid: number;
  readonly port: number;
  readonly ended: Promise<void>;
  /** Ends it in order, and without order when it takes longer than ten seconds. */
  readonly stop: () => Promise<void>;
};

/**
 * Starts the server on loopback only and waits until it takes connections. It runs in a session of its own, so a
 * Ctrl-C in the terminal reaches us and not it: we stop it last.
 *
 * @param log file that takes its words
 * @param settings further `name=value` settings
 */
export async function runServer(
  cluster: Cluster,
  port: number,
  log: string,
  settings: readonly string[] = [],
): Promise<Server> {
  const { pgdata, options } = runAs(cluster.folder, cluster.user);
  const fixed = ['listen_addresses=127.0.0.1', 'unix_socket_directories=', 'logging_collector=off'];
  const flags = [...fixed, ...settings].flatMap((setting) => ['-c', setting]);
  const words = openSync(log, 'w');
  const child = spawn(cluster.binaries.postgres, ['-D', pgdata, '-p', String(port), ...flags], {
    ...options,
    detached: true,
    stdio: ['ignore', words, words],
  });
  closeSync(words);
  const ended = new Promise<void>((resolve) => {
    child.once('exit', () => resolve());
    child.once('error', () => resolve());
  });
  const ready = () => hasEnded(child) || isReady(cluster.folder, child.pid);
  if (!(await until(ready, 60_000, 10)) || child.pid === undefined || hasEnded(child)) {
    child.kill('SIGQUIT');
    throw startFailure(cluster.folder, log);
  }
  return { pid: child.pid, port, ended, stop: () => stopServer(child, ended) };
}

function hasEnded(child: ChildProcess): boolean {
  return child.pid === undefined || child.exitCode !== null || child.signalCode !== null;
}

function isReady(folder: string, pid: number | undefined): boolean {
  try {
    const state = parsePostmasterPid(readFileSync(join(folder, 'postmaster.pid'), 'utf8'));
    return state?.pid === pid && state?.isReady === true;
  } catch {
    return false;
  }
}

async function stopServer(child: ChildProcess, ended: Promise<void>): Promise<void> {
  if (child.pid === undefined || hasEnded(child)) return;
  signal(child.pid, 'SIGINT');
  if (await until(() => hasEnded(child), 10_000)) return ended;
  signal(child.pid, 'SIGQUIT');
  if (!(await until(() => hasEnded(child), 3_000))) signal(child.pid, 'SIGKILL');
  await ended;
}

function startFailure(folder: string, log: string): Error {
  const words = readFileSync(log, 'utf8');
  if (isDiskFullText(words)) return Object.assign(new Error(words), { code: 'ENOSPC' });
  const fatal = words.split('\n').findLast((line) => /FATAL|PANIC|postgres:/.test(line)) ?? 'it said nothing';
  return new Sentence(
    `The database in ${folder} does not start: ${fatal.replace(/^.*?(FATAL|PANIC):\s*/, '')} (all its words: ${log}).`,
  );
}
