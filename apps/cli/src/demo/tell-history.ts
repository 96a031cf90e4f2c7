import { setTimeout as after } from 'node:timers/promises';
import type { Home } from '../home/open-home.ts';
import { say, secondsSince } from '../say.ts';
import { readDemoFile } from './demo-file.ts';
import { demoResources } from './demo-resources.ts';
import { clipsFolder } from './fill-with-demo.ts';
import { readHistoryMark, writeHistoryMark } from './history-mark.ts';

export type History = {
  /** Ends after the chapter that is being told; the next start goes on with the one after it. */
  stop(): Promise<void>;
};

/** The first page of whoever waits for `ready` comes before the past. */
const firstPauseMs = 1_500;
/** Between two chapters, so that the service is not slowed. */
const pauseMs = 40;

/**
 * Tells the history of the demo academies beside the running service, from where an earlier start was cut off.
 *
 * @returns undefined where nothing is left to tell
 */
export function tellHistory(root: string, home: Home, url: string, appUrl: string): History | undefined {
  const mark = readHistoryMark(home.folder);
  const demo = readDemoFile(home.folder);
  if (mark === undefined || mark.isDone || demo === undefined) return undefined;
  const stopping = new AbortController();
  const pause = (ms: number) => after(ms, undefined, { signal: stopping.signal }).catch(() => undefined);
  const tell = async (): Promise<void> => {
    await pause(firstPauseMs);
    if (stopping.signal.aborted) return;
    const begun = performance.now();
    const { seedHistory } = await import('@ballfirst/demo/seed/seed-history');
    const resources = demoResources(home, url, appUrl);
    try {
      const isWhole = await seedHistory({
        resources,
        clipsFolder: clipsFolder(root),
        demo: demo.academies,
        from: new Date(mark.from),
        isStopped: () => stopping.signal.aborted,
        onProgress: async (told, of) => {
          if (told < of && told % 20 === 0) say(`  the demo's past: ${told} of ${of} swings are told`);
          await pause(pauseMs);
        },
      });
      if (!isWhole) return;
      writeHistoryMark(home.folder, { ...mark, isDone: true });
      say(`the demo's past is told, ninety days of it (${secondsSince(begun)})`);
    } finally {
      await resources.db.close();
    }
  };
  const telling = tell().catch((error: unknown) => {
    if (!stopping.signal.aborted) say(`the demo's past broke off, the next start goes on: ${String(error)}`);
  });
  return {
    stop: async () => {
      stopping.abort();
      await telling;
    },
  };
}
