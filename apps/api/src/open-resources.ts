import { openDatabase } from '@ballfirst/db/database';
import { blobsAt } from '@ballfirst/edges/blobs-at';
import { mailBySmtp } from '@ballfirst/edges/mail-by-smtp';
import { mailToFolder } from '@ballfirst/edges/mail-to-folder';
import { clockFromFile, systemClock } from '@ballfirst/edges/system-clock';
import type { Resources } from '@ballfirst/services/context';
import type { Log } from '@ballfirst/services/ports';
import type { ApiEnv } from './env.ts';

/** Joins the adapters of this process to the ports of the verbs. */
export const openResources = (env: ApiEnv, log: Log): Resources => ({
  db: openDatabase({ url: env.databaseUrl, poolSize: 12, applicationName: 'ballfirst-api' }),
  clock: env.clockOffsetFile ? clockFromFile(env.clockOffsetFile) : systemClock,
  blobs: blobsAt({ folder: env.mediaFolder, mediaUrl: env.mediaUrl }),
  mailer: env.smtpUrl ? mailBySmtp(env.smtpUrl) : mailToFolder(env.mailFolder),
  log,
  publicUrl: env.publicUrl,
});
