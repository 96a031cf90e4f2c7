import { type Database, openDatabase } from '@ballfirst/db/database';
import { blobsOnDisk } from '@ballfirst/edges/blobs-on-disk';
import { silentLog } from '@ballfirst/edges/log';
import { mailToFolder } from '@ballfirst/edges/mail-to-folder';
import { systemClock } from '@ballfirst/edges/system-clock';
import type { Home } from '../home/open-home.ts';

/** What the verbs need to write the demo. A commit that a cut takes back is told again: none waits for the disk. */
export function demoResources(home: Home, publicUrl: string, appUrl: string) {
  // Prisma loads relations side by side on one connection, about which pg 8 warns in the middle of our lines.
  process.noDeprecation = true;
  const url = new URL(appUrl);
  url.searchParams.set('options', '-c synchronous_commit=off');
  const db: Database = openDatabase({ url: url.toString(), applicationName: 'ballfirst demo' });
  return {
    db,
    clock: systemClock,
    blobs: blobsOnDisk(home.media),
    mailer: mailToFolder(home.mail),
    log: silentLog,
    publicUrl,
  };
}
