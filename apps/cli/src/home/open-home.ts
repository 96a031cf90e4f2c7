import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeFolder } from './make-folder.ts';

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
 * @throws Sentence when there can be no such folder; system errors otherwise, for `explainFailure`
 */
export function openHome(folder: string): Home {
  const home = {
    folder,
    database: join(folder, 'database'),
    media: join(folder, 'media'),
    mail: join(folder, 'mail'),
    logs: join(folder, 'logs'),
  };
  for (const part of [folder, home.media, home.mail, home.logs]) makeFolder(part);
  const probe = join(folder, '.writable');
  writeFileSync(probe, 'x'.repeat(4096));
  rmSync(probe);
  return home;
}
