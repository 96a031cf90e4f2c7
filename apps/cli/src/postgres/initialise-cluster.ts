import { spawn } from 'node:child_process';
import {
  chownSync,
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { isDiskFullText } from '../explain-failure.ts';
import { Sentence } from '../sentence.ts';
import type { Binaries } from './binaries.ts';
import { runAs } from './run-as.ts';
import type { ServerUser } from './server-user.ts';

export type Cluster = {
  readonly folder: string;
  readonly binaries: Binaries;
  readonly user: ServerUser | undefined;
};

/** Built-in C.UTF-8 sorts alike on every machine; only servers since 17 know it. */
const locales = [['--locale=C', '--locale-provider=builtin', '--builtin-locale=C.UTF-8'], ['--locale=C']];

/**
 * Makes the data folder of a server, once: beside its place, and moved there when it is whole.
 *
 * @param password of the superuser `postgres`
 * @param isThrowaway true for tests: nothing has to survive a power cut, so nothing is flushed
 */
export async function initialiseCluster(
  cluster: Cluster,
  password: string,
  isThrowaway = false,
): Promise<void> {
  const { folder } = cluster;
  if (existsSync(join(folder, 'PG_VERSION'))) return;
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    throw new Sentence(`${folder} holds files that are no database: move them away, then start again.`);
  }
  const unfinished = `${folder}.new`;
  for (const locale of locales) {
    emptyFolder(unfinished, cluster.user);
    const options = isThrowaway ? [...locale, '--no-sync'] : locale;
    const { code, words } = await initdb({ ...cluster, folder: unfinished }, password, options);
    if (code === 0) {
      rmSync(folder, { recursive: true, force: true });
      return renameSync(unfinished, folder);
    }
    if (isDiskFullText(words)) throw Object.assign(new Error(words), { code: 'ENOSPC' });
    const isOlder = /locale.provider/.test(words) && locale !== locales.at(-1);
    if (!isOlder)
      throw new Sentence(`The database could not be made in ${folder}: ${words.trim().split('\n').at(-1)}`);
  }
}

function emptyFolder(folder: string, user: ServerUser | undefined): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  if (user !== undefined) chownSync(folder, user.uid, user.gid);
}

/** The password goes in by an open file: its path would have to be readable for the server's user. */
function initdb({ folder, binaries, user }: Cluster, password: string, options: readonly string[]) {
  const file = `${folder}.password`;
  writeFileSync(file, `${password}\n`, { mode: 0o600 });
  if (user !== undefined) chownSync(file, user.uid, user.gid);
  const input = openSync(file, 'r');
  const as = runAs(folder, user);
  const flags = ['--username=postgres', '--auth=scram-sha-256', '--pwfile=/dev/stdin', '--encoding=UTF8'];
  const child = spawn(binaries.initdb, [`--pgdata=${as.pgdata}`, ...flags, ...options], {
    ...as.options,
    stdio: [input, 'ignore', 'pipe'],
  });
  let words = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    words += text;
  });
  return new Promise<{ code: number; words: string }>((resolve) => {
    child.on('error', (error) => resolve({ code: 1, words: error.message }));
    child.on('close', (code) => resolve({ code: code ?? 1, words }));
  }).finally(() => {
    closeSync(input);
    rmSync(file, { force: true });
  });
}
