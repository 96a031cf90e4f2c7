import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { birthOf, isAlive } from '../processes.ts';
import { Sentence } from '../sentence.ts';

export type Lock = {
  readonly file: string;
  readonly token: string;
  /** An earlier copy was killed and left it: its parts may still be ending. */
  readonly wasLeft: boolean;
};
type Holder = { readonly pid: number; readonly birth: string; readonly url: string };

/** @returns undefined when the text is no lock of ours (cut off, or from something else) */
export function parseHolder(text: string): Holder | undefined {
  const [pid, birth = '', url = ''] = text.trim().split(' ');
  return Number.isInteger(Number(pid)) && Number(pid) > 0 ? { pid: Number(pid), birth, url } : undefined;
}

/**
 * Takes the data folder for this process; a lock whose holder is gone is taken over.
 *
 * @param url where this copy will answer, told to whoever comes second
 * @throws Sentence when another copy runs on the folder
 */
export function takeLock(folder: string, url: string): Lock {
  const file = join(folder, 'start.lock');
  const token = `${process.pid} ${birthOf(process.pid) || '-'} ${url}\n`;
  let wasLeft = false;
  for (let attempt = 0; attempt < 3; attempt += 1) {
    try {
      writeFileSync(file, token, { flag: 'wx', flush: true });
      return { file, token, wasLeft };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const holder = parseHolder(contentOf(file));
    if (holder !== undefined && isStillThere(holder)) {
      throw new Sentence(
        `Another copy already runs on ${folder} (process ${holder.pid}, ${holder.url}): stop it, or set BALLFIRST_HOME.`,
      );
    }
    rmSync(file, { force: true });
    wasLeft = true;
  }
  throw new Sentence(
    `Another copy is starting on ${folder} at this moment: wait for it, or set BALLFIRST_HOME.`,
  );
}

export function releaseLock(lock: Lock): void {
  if (contentOf(lock.file) === lock.token) rmSync(lock.file, { force: true });
}

function isStillThere(holder: Holder): boolean {
  const birth = birthOf(holder.pid);
  return isAlive(holder.pid) && (birth === '' || holder.birth === '-' || birth === holder.birth);
}

function contentOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
