import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { Sentence } from '../sentence.ts';

/**
 * Makes a folder and its missing parents, for this user only. (Node's own recursive way never comes back from a
 * file system that refuses new folders with "no such file", as /proc does.)
 *
 * @throws Sentence where there is a file in the way or no folder can be; system errors otherwise
 */
export function makeFolder(folder: string): void {
  const there = statSync(folder, { throwIfNoEntry: false });
  if (there?.isDirectory()) return;
  if (there !== undefined) throw new Sentence(`${folder} is a file: set BALLFIRST_HOME to a folder.`);
  makeFolder(dirname(folder));
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'EEXIST') return;
    if (code === 'ENOENT')
      throw new Sentence(`No folder can be made at ${folder}: set BALLFIRST_HOME to another.`);
    throw error;
  }
}
