import { until } from '../until.ts';

/** Waits until the address answers with a status below the limit. */
export function answers(url: string, below: number, withinMs: number): Promise<boolean> {
  return until(async () => {
    try {
      const reply = await fetch(url, { redirect: 'manual', signal: AbortSignal.timeout(5_000) });
      await reply.body?.cancel();
      return reply.status < below;
    } catch {
      return false;
    }
  }, withinMs);
}
