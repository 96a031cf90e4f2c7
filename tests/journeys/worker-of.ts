import { readdir, readFile } from 'node:fs/promises';

/**
 * The process that is the worker of the service with this data folder, by the process table of Linux.
 * @returns its id, or undefined while it is down
 */
export const workerOf = async (home: string): Promise<number | undefined> => {
  for (const entry of await readdir('/proc')) {
    if (!/^\d+$/.test(entry)) continue;
    try {
      const command = await readFile(`/proc/${entry}/cmdline`, 'utf8');
      if (!command.includes('worker/dist/main.mjs')) continue;
      const environment = await readFile(`/proc/${entry}/environ`, 'utf8');
      if (environment.includes(`MEDIA_FOLDER=${home}/`)) return Number(entry);
    } catch {
      // A process that ended while it was read.
    }
  }
  return undefined;
};

/** Ends it without a word, as a machine that fails does. @returns whether there was one to end */
export const killWorker = async (home: string): Promise<boolean> => {
  const pid = await workerOf(home);
  if (pid === undefined) return false;
  process.kill(pid, 'SIGKILL');
  return true;
};
