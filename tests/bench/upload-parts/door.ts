import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { createPerson } from '@ballfirst/db/crossings/create-person';
import { openDatabase } from '@ballfirst/db/database';
import { applyMigrations } from '@ballfirst/db/migrate/apply-migrations';
import { ensureRoles } from '@ballfirst/db/migrate/ensure-roles';
import { grantDatabase } from '@ballfirst/db/migrate/grant-database';
import { openSession } from '@ballfirst/services/identity/session';
import { startEmbeddedServer } from '@ballfirst/testing/embedded-server';
import { createMembership, createStudent } from '@ballfirst/testing/factories';
import { migrationsFolder } from '@ballfirst/testing/make-template';
import { roleUrl, testPasswords } from '@ballfirst/testing/role-url';
import { sparingArguments, sparingEnv } from '../../../apps/cli/src/start/sparing.ts';
import { bareResources } from '../parts/bare-resources.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const databaseName = 'bench_upload';

export type Door = { readonly address: string; readonly child: ChildProcess };

/** A database of its own with so many students, each signed in; and how to start doors on it. */
export async function openDoors(mediaFolder: string, students: number) {
  const server = await startEmbeddedServer();
  const { superuserUrl } = server;
  await ensureRoles({ superuserUrl, databaseName, passwords: testPasswords });
  await applyMigrations({ ownerUrl: roleUrl(superuserUrl, databaseName, 'owner'), folder: migrationsFolder });
  await grantDatabase({ superuserUrl, databaseName });
  const url = roleUrl(superuserUrl, databaseName, 'app');
  const db = openDatabase({ url, poolSize: 2, applicationName: 'bench' });
  const cookies: string[] = [];
  while (cookies.length < students) cookies.push(await signedIn(db));
  return {
    cookies,
    start: (port = 0) => startDoor(url, mediaFolder, port),
    close: async () => {
      await db.close();
      await server.stop();
    },
  };
}

async function signedIn(db: ReturnType<typeof openDatabase>): Promise<string> {
  const member = await createMembership(db, { role: 'student', name: 'A student' });
  const { academyId, personId, name } = member;
  const now = new Date();
  const trialEndsAt = new Date(now.getTime() + 86_400_000);
  await createStudent(db, { academyId, membershipId: member.id, trialStartedAt: now, trialEndsAt });
  await createPerson(db, { id: personId, name, email: `${personId}@example.test`, hash: 'nobody', now });
  const { token } = await openSession({ resources: bareResources(db), personId, academyId, device: 'bench' });
  return `ballfirst=${token}`;
}

/** The built door in a process of its own, as the service runs it. */
async function startDoor(databaseUrl: string, folder: string, port: number): Promise<Door> {
  const child = spawn(
    process.execPath,
    [...sparingArguments, join(root, 'apps', 'api', 'dist', 'main.mjs')],
    {
      env: {
        PATH: process.env.PATH ?? '',
        ...sparingEnv,
        PORT: String(port),
        DATABASE_URL: databaseUrl,
        MEDIA_FOLDER: folder,
        MAIL_FOLDER: join(folder, 'mail'),
        PUBLIC_URL: 'http://127.0.0.1:4100',
        SITE_URL: 'http://127.0.0.1:9',
      },
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  for await (const line of createInterface({ input: child.stderr })) {
    const address = /"address":"([^"]+)"/.exec(line)?.[1];
    if (address !== undefined) {
      child.stderr.resume();
      return { address, child };
    }
  }
  throw new Error('The door ended before it opened.');
}

export async function kill(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill('SIGKILL');
  await gone;
}

/** The most memory a process ever held, in MiB (Linux). @throws Error elsewhere */
export function peakRssMib(child: ChildProcess): number {
  const status = readFileSync(`/proc/${child.pid}/status`, 'utf8');
  return Number(/VmHWM:\s+(\d+) kB/.exec(status)?.[1]) / 1024;
}
