import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Sentence } from '../sentence.ts';

export type Home = {
  readonly folder: string;
  readonly database: string;
  readonly media: string;
  readonly mail: string;
  readonly logs: string;
};

/**
 * Makes the data folder and its parts, and proves that it can be written.
 *
 * @param folder absolute
 * @throws Sentence when the path is a file; system errors otherwise, for `explainFailure`
 */
export function openHome(folder: string): Home {
  const home = {
    folder,
    database: join(folder, 'database'),
    media: join(folder, 'media'),
    mail: join(folder, 'mail'),
    logs: join(folder, 'logs'),
  };
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    for (const part of [home.media, home.mail, home.logs]) mkdirSync(part, { recursive: true });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code !== 'ENOTDIR' && code !== 'EEXIST') throw error;
    throw new Sentence(
      `The data folder ${folder} is a file or lies below one: set BALLFIRST_HOME to a folder.`,
    );
  }
  const probe = join(folder, '.writable');
  writeFileSync(probe, 'x'.repeat(4096));
  rmSync(probe);
  return home;
}
