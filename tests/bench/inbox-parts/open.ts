import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { createPerson } from '@ballfirst/db/crossings/create-person';
import { openSession } from '@ballfirst/db/crossings/open-session';
import { openDatabase } from '@ballfirst/db/database';
import { newId } from '@ballfirst/db/ids';
import { applyMigrations } from '@ballfirst/db/migrate/apply-migrations';
import { ensureRoles } from '@ballfirst/db/migrate/ensure-roles';
import { grantDatabase, urlOfDatabase } from '@ballfirst/db/migrate/grant-database';
import { newToken, tokenHash } from '@ballfirst/services/identity/session';
import { startEmbeddedServer } from '@ballfirst/testing/embedded-server';
import { migrationsFolder } from '@ballfirst/testing/make-template';
import { roleUrl, testPasswords } from '@ballfirst/testing/role-url';
import pg from 'pg';
import { sparingArguments, sparingEnv } from '../../../apps/cli/src/start/sparing.ts';
import { type Filled, fill } from './fill.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const databaseName = 'bench_inbox';

export type Bench = Awaited<ReturnType<typeof openBench>>;

/** A database of its own, filled; the ways into it, and servers on it that are ended with it. */
export async function openBench(submissions: number) {
  const server = await startEmbeddedServer();
  const { superuserUrl } = server;
  await ensureRoles({ superuserUrl, databaseName, passwords: testPasswords });
  await applyMigrations({ ownerUrl: roleUrl(superuserUrl, databaseName, 'owner'), folder: migrationsFolder });
  await grantDatabase({ superuserUrl, databaseName });
  const plainUrl = urlOfDatabase(superuserUrl, databaseName);
  const appUrl = roleUrl(superuserUrl, databaseName, 'app');
  const plain = new pg.Client({ connectionString: plainUrl });
  await plain.connect();
  const filled: Filled = await fill(plain, submissions);
  const db = openDatabase({ url: appUrl, poolSize: 12, applicationName: 'bench' });
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-bench-inbox-'));
  const children: ChildProcess[] = [];

  /** A program of ours in a process of its own; it says where it listens. */
  const start = async (args: readonly string[], env: Record<string, string>): Promise<string> => {
    const child = spawn(process.execPath, [...sparingArguments, ...args], {
      cwd: root,
      env: { PATH: process.env.PATH ?? '', ...sparingEnv, ...env },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    children.push(child);
    for await (const line of createInterface({ input: child.stderr })) {
      const address = /"address":"([^"]+)"/.exec(line)?.[1];
      if (address === undefined) continue;
      child.stderr.resume();
      return address;
    }
    throw new Error(`${args.at(-1)} ended before it listened.`);
  };
  /** Signs a coach in. @returns the cookie */
  const signIn = async (membershipId: string): Promise<string> => {
    const { rows } = await plain.query<{ person_id: string }>(
      'SELECT person_id FROM membership WHERE academy_id = $1 AND id = $2',
      [filled.big, membershipId],
    );
    const personId = rows[0]?.person_id ?? '';
    const [token, now] = [newToken(), new Date()];
    const expiresAt = new Date(now.getTime() + 86_400_000);
    const email = `${personId}@example.test`;
    await createPerson(db, { id: personId, name: 'A coach', email, hash: 'nobody', now });
    await openSession(db, {
      ...{ id: newId(), personId, tokenHash: tokenHash(token), academyId: filled.big, now, expiresAt },
      device: 'bench',
    });
    return `ballfirst=${token}`;
  };
  return {
    ...filled,
    plain,
    db,
    signIn,
    startDoor: () =>
      start([join(root, 'apps', 'api', 'dist', 'main.mjs')], {
        ...{ PORT: '0', DATABASE_URL: appUrl, MEDIA_FOLDER: folder, MAIL_FOLDER: join(folder, 'mail') },
        ...{ PUBLIC_URL: 'http://127.0.0.1:4100', SITE_URL: 'http://127.0.0.1:9' },
      }),
    startPlain: () =>
      start(['--import', 'tsx', join(import.meta.dirname, 'plain-server.ts'), plainUrl, filled.big], {}),
    close: async () => {
      for (const child of children) {
        const gone = once(child, 'exit');
        child.kill('SIGKILL');
        await gone;
      }
      await plain.end();
      await db.close();
      await server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
