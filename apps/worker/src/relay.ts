import { Envelope, liveKinds } from '@ballfirst/contracts/events';
import { markOutboxSent } from '@ballfirst/db/crossings/mark-outbox-sent';
import { takeOutbox } from '@ballfirst/db/crossings/take-outbox';
import { announce } from '@ballfirst/db/live/announce';
import type { Resources } from '@ballfirst/services/context';
import type { NewJob } from './job.ts';
import type { Queues } from './queues.ts';
import { jobsOn } from './registry.ts';

const batch = 500;
const live: ReadonlySet<string> = new Set(liveKinds);
const isLive = (kind: string): boolean => live.has(kind);
/** An event taken by a relay that died before marking it is taken again after this. */
const retakeAfterSeconds = 20;

/**
 * Moves one batch of events from the outbox into the queues: add first, mark after. Dying between the two adds twice;
 * the job id (event and job) makes the second adding nothing. @returns how many events were moved
 */
export const relayOnce = async (resources: Resources, queues: Queues): Promise<number> => {
  const rows = await takeOutbox(resources.db, {
    limit: batch,
    now: resources.clock.now(),
    retakeAfterSeconds,
  });
  if (rows.length === 0) return 0;
  const jobs: NewJob[] = [];
  for (const row of rows) {
    const event = Envelope.parse({
      id: row.id,
      academyId: row.academyId,
      kind: row.kind,
      payload: row.payload,
    });
    const data = { id: event.id, academyId: event.academyId, payload: event.payload };
    for (const job of jobsOn(event.kind)) jobs.push({ job, data, id: `${event.id}.${job.name}` });
  }
  // Open pages are told first: it costs one statement, and told twice they only read once more.
  await announce(
    resources.db,
    rows.filter((row) => isLive(row.kind)),
  );
  await queues.add(jobs);
  await markOutboxSent(resources.db, { ids: rows.map((row) => row.id), now: resources.clock.now() });
  return rows.length;
};

export type Relay = { stop(): Promise<void> };

/** Relays until stopped: at once while there is work, else every `pauseMs`. An error is logged and tried again. */
export const startRelay = (resources: Resources, queues: Queues, pauseMs: number): Relay => {
  const stopping = new AbortController();
  const pause = (ms: number): Promise<void> =>
    new Promise((done) => {
      const timer = setTimeout(done, ms);
      stopping.signal.addEventListener('abort', () => {
        clearTimeout(timer);
        done();
      });
    });
  const run = async (): Promise<void> => {
    let failures = 0;
    while (!stopping.signal.aborted) {
      try {
        const moved = await relayOnce(resources, queues);
        failures = 0;
        if (moved < batch) await pause(pauseMs);
      } catch (error) {
        failures += 1;
        resources.log.error({ error: String(error), failures }, 'the relay failed and tries again');
        await pause(Math.min(10_000, pauseMs * 2 ** failures));
      }
    }
  };
  const running = run();
  return {
    stop: async () => {
      stopping.abort();
      await running;
    },
  };
};
