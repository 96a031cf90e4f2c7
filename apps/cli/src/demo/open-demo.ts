import type { Home } from '../home/open-home.ts';
import { say } from '../say.ts';
import type { DatabaseUrls } from '../start/settings.ts';
import { readDemoFile, writeDemoFile } from './demo-file.ts';
import { fillWithDemo } from './fill-with-demo.ts';
import { writeHistoryMark } from './history-mark.ts';
import { signInLines } from './sign-in-lines.ts';
import { forgetUnfinishedDemo } from './unfinished.ts';

export type DemoWish = {
  readonly root: string;
  readonly home: Home;
  readonly url: string;
  readonly database: DatabaseUrls;
  readonly isWanted: boolean;
};

/**
 * Fills an empty database with the demo academies, or finds those of an earlier start.
 *
 * @returns the sign-in lines to print; none where there is no demo
 */
export async function openDemo({ root, home, url, database, isWanted }: DemoWish): Promise<string[]> {
  const known = readDemoFile(home.folder);
  if (known !== undefined) {
    const demo = { ...known, url };
    if (known.url !== url) writeDemoFile(home.folder, demo);
    return signInLines(demo);
  }
  if (!isWanted) return [];
  const now = new Date();
  const academies = await fillWithDemo(root, home, url, database.app, now);
  const demo = academies === null ? undefined : { url, academies };
  if (demo !== undefined) {
    writeHistoryMark(home.folder, { from: now.toISOString(), isDone: false });
    writeDemoFile(home.folder, demo);
  }
  forgetUnfinishedDemo(home.folder);
  if (demo === undefined) return [];
  say('  the demo academies are in');
  return signInLines(demo);
}
