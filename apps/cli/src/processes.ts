import { readFileSync } from 'node:fs';

/** Whether a process with this number runs, ours or not; one that only waits to be buried by its parent does not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EPERM') return false;
  }
  return statOf(pid)[0] !== 'Z';
}

/**
 * When the process began, in the kernel's ticks: numbers are given again, so a number alone names nobody.
 *
 * @returns an empty string where the system does not tell (anything but Linux)
 */
export function birthOf(pid: number): string {
  return statOf(pid)[19] ?? '';
}

/** The fields of /proc/PID/stat from the third (the state) on; the name before them may hold anything. */
function statOf(pid: number): string[] {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  } catch {
    return [];
  }
}

/** Sends a signal to a process, or to a whole group when negative, and does not mind when it is gone. */
export function signal(pid: number, name: NodeJS.Signals): void {
  try {
    process.kill(pid, name);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ESRCH') throw error;
  }
}
