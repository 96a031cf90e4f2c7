import { readFileSync, readlinkSync, realpathSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { isAlive, signal } from '../processes.ts';
import { Sentence } from '../sentence.ts';
import { until } from '../until.ts';
import { parsePostmasterPid } from './postmaster-pid.ts';

/**
 * Ends a server that an earlier run left on this data folder, and clears a pid file whose number now belongs to
 * another program (a container gives the same small numbers again and again).
 *
 * @param folder the data folder of the server
 */
export async function settleLeftover(folder: string): Promise<void> {
  const file = join(folder, 'postmaster.pid');
  const left = parsePostmasterPid(contentOf(file));
  if (left === undefined || !isAlive(left.pid)) return;
  if (!isServerOf(left.pid, folder)) return rmSync(file, { force: true });
  const gone = () => !isAlive(left.pid);
  signal(left.pid, 'SIGINT');
  if (await until(gone, 10_000)) return;
  // Immediate: the next server replays its log. A frozen process takes no signal before it goes on.
  signal(left.pid, 'SIGCONT');
  signal(left.pid, 'SIGQUIT');
  if (await until(gone, 5_000)) return;
  throw new Sentence(`An old database server (process ${left.pid}) does not end: end it, then start again.`);
}

/** Linux tells the program and the folder of a process; elsewhere a living number is believed. */
function isServerOf(pid: number, folder: string): boolean {
  if (process.platform !== 'linux') return true;
  try {
    const program = basename(readlinkSync(`/proc/${pid}/exe`)).replace(' (deleted)', '');
    return program === 'postgres' && readlinkSync(`/proc/${pid}/cwd`) === realpathSync(folder);
  } catch {
    return false;
  }
}

function contentOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
