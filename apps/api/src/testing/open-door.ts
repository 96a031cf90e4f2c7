import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Database } from '@ballfirst/db/database';
import { blobsOnDisk } from '@ballfirst/edges/blobs-on-disk';
import { silentLog } from '@ballfirst/edges/log';
import { mailToFolder } from '@ballfirst/edges/mail-to-folder';
import type { Resources } from '@ballfirst/services/context';
import type { FastifyInstance } from 'fastify';
import { buildApp } from '../build-app.ts';
import { type ApiEnv, readEnv } from '../env.ts';
import type { OpenUploadFile } from '../uploads/upload-file.ts';
import type { Pace } from '../uploads/watch-pace.ts';

export type Door = {
  readonly app: FastifyInstance;
  readonly env: ApiEnv;
  readonly resources: Resources;
  /** Moves with `now`, so that a test can let hours go by. */
  now: Date;
  close(): Promise<void>;
};

export type DoorOptions = {
  readonly publicUrl?: string;
  readonly siteUrl?: string;
  readonly now?: Date;
  readonly pace?: Pace;
  readonly openFile?: OpenUploadFile;
  /** Where media lie; a new folder, removed with the door, unless given. */
  readonly folder?: string;
  readonly log?: Resources['log'];
  /** The test's database, for what listens on a connection of its own. */
  readonly databaseUrl?: string;
  readonly beatMs?: number;
};

/** The door as tests open it: the real app on real adapters, in a folder of its own, with a clock the test moves. */
export const openDoor = async (db: Database, options: DoorOptions = {}): Promise<Door> => {
  const folder = options.folder ?? (await mkdtemp(path.join(tmpdir(), 'ballfirst-door-')));
  const env = readEnv({
    PORT: '0',
    SITE_URL: options.siteUrl ?? 'http://127.0.0.1:9',
    DATABASE_URL: options.databaseUrl ?? 'postgresql://of-the-test',
    MEDIA_FOLDER: folder,
    MAIL_FOLDER: path.join(folder, 'mail'),
    PUBLIC_URL: options.publicUrl ?? 'http://127.0.0.1:4100',
  });
  const clock = { now: () => door.now };
  const resources: Resources = {
    db,
    clock,
    blobs: blobsOnDisk(folder),
    mailer: mailToFolder(env.mailFolder),
    log: options.log ?? silentLog,
    publicUrl: env.publicUrl,
  };
  const app = await buildApp({
    env,
    resources,
    ...(options.pace ? { pace: options.pace } : {}),
    ...(options.openFile ? { openFile: options.openFile } : {}),
    ...(options.beatMs ? { beatMs: options.beatMs } : {}),
  });
  const door: Door = {
    app,
    env,
    resources,
    now: options.now ?? new Date(),
    close: async () => {
      await app.close();
      if (options.folder === undefined) await rm(folder, { recursive: true, force: true });
    },
  };
  return door;
};
