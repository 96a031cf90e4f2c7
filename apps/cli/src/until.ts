import { setTimeout as after } from 'node:timers/promises';

/**
 * Asks again and again until the answer is yes or the time is over.
 *
 * @param withinMs how long to go on asking
 * @param everyMs pause between two questions
 * @returns whether the answer was yes in time
 */
export async function until(
  holds: () => boolean | Promise<boolean>,
  withinMs: number,
  everyMs = 50,
): Promise<boolean> {
  const end = performance.now() + withinMs;
  for (;;) {
    if (await holds()) return true;
    if (performance.now() >= end) return false;
    await after(everyMs);
  }
}
