import { join } from 'node:path';
import { listAcademies } from '@ballfirst/db/crossings/list-academies';
import { openDatabase } from '@ballfirst/db/database';
import type { DemoAcademy } from '@ballfirst/demo/seed/seed-demo';
import { blobsOnDisk } from '@ballfirst/edges/blobs-on-disk';
import { silentLog } from '@ballfirst/edges/log';
import { mailToFolder } from '@ballfirst/edges/mail-to-folder';
import { systemClock } from '@ballfirst/edges/system-clock';
import type { Home } from '../home/open-home.ts';
import { noteUnfinishedDemo } from './unfinished.ts';

/** @returns null when the database holds an academy already */
export async function fillWithDemo(
  root: string,
  home: Home,
  publicUrl: string,
  appUrl: string,
): Promise<DemoAcademy[] | null> {
  const { seedDemo } = await import('@ballfirst/demo/seed/seed-demo');
  // Prisma loads relations side by side on one connection, about which pg 8 warns in the middle of our lines.
  process.noDeprecation = true;
  // A demo cut off half-way is thrown away: no commit of it waits for the disk, and the last one of all takes them along.
  const url = new URL(appUrl);
  url.searchParams.set('options', '-c synchronous_commit=off');
  const db = openDatabase({ url: url.toString(), applicationName: 'ballfirst demo' });
  try {
    // Only a database known to be empty may be thrown away by the next start.
    if ((await listAcademies(db)).length > 0) return null;
    noteUnfinishedDemo(home.folder);
    return await seedDemo({
      resources: {
        db,
        clock: systemClock,
        blobs: blobsOnDisk(home.media),
        mailer: mailToFolder(home.mail),
        log: silentLog,
        publicUrl,
      },
      clipsFolder: join(root, 'packages', 'demo', 'clips'),
    });
  } finally {
    await db.close();
  }
}
