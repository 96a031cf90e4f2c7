import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What the embedded server of one data folder knows by heart: made once, kept. */
export type Secrets = {
  readonly superuser: string;
  readonly owner: string;
  readonly app: string;
  readonly queue: string;
  readonly databasePort: number;
};

const secretsFile = (folder: string) => join(folder, 'secrets.json');

/** @returns the kept secrets, or new ones that are not kept yet */
export function readSecrets(folder: string): Secrets {
  const file = secretsFile(folder);
  if (existsSync(file)) return JSON.parse(readFileSync(file, 'utf8')) as Secrets;
  return { superuser: word(), owner: word(), app: word(), queue: word(), databasePort: 0 };
}

/** Keeps them readable for this user only; whole or not at all. */
export function keepSecrets(folder: string, secrets: Secrets): void {
  const file = secretsFile(folder);
  writeFileSync(`${file}.new`, `${JSON.stringify(secrets, null, 2)}\n`, { mode: 0o600, flush: true });
  renameSync(`${file}.new`, file);
}

/** 192 bits, without a character that an address or a shell would read as something else. */
function word(): string {
  return randomBytes(24).toString('hex');
}
