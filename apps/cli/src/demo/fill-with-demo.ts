import { join } from 'node:path';
import { listAcademies } from '@ballfirst/db/crossings/list-academies';
import type { DemoAcademy } from '@ballfirst/demo/seed/seed-demo';
import type { Home } from '../home/open-home.ts';
import { demoResources } from './demo-resources.ts';
import { noteUnfinishedDemo } from './unfinished.ts';

/** Where the kept clips of the demo lie. */
export const clipsFolder = (root: string) => join(root, 'packages', 'demo', 'clips');

/**
 * @param now the instant that the demo takes for the present
 * @returns null when the database holds an academy already
 */
export async function fillWithDemo(
  root: string,
  home: Home,
  publicUrl: string,
  appUrl: string,
  now: Date,
): Promise<DemoAcademy[] | null> {
  const { seedDemo } = await import('@ballfirst/demo/seed/seed-demo');
  const resources = demoResources(home, publicUrl, appUrl);
  try {
    // Only a database known to be empty may be thrown away by the next start.
    if ((await listAcademies(resources.db)).length > 0) return null;
    noteUnfinishedDemo(home.folder);
    return await seedDemo({ resources, clipsFolder: clipsFolder(root), now });
  } finally {
    await resources.db.close();
  }
}
