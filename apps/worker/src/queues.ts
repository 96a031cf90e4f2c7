import { type Job, type NewJob, type QueueName, queueNames } from './job.ts';
import type { OpenQueue, QueueBackend } from './queue-backend.ts';

/** The three queues as the relay, the ticks and the reconciler see them. */
export type Queues = {
  /** Adds in bulk; a job whose id is in its queue already is passed over. */
  add(jobs: readonly NewJob[]): Promise<void>;
  /** One tick for all workers, however many run. */
  every(job: Job, everyMs: number): Promise<void>;
  close(): Promise<void>;
};

export const openQueues = (backend: QueueBackend, onError: (error: Error) => void): Queues => {
  const byName = new Map<QueueName, OpenQueue>(
    queueNames.map((name) => {
      const queue = backend.queue(name);
      queue.on('error', onError);
      return [name, queue];
    }),
  );
  const of = (name: QueueName): OpenQueue => {
    const queue = byName.get(name);
    if (!queue) throw new RangeError(`There is no queue named ${name}.`);
    return queue;
  };
  return {
    add: async (jobs) => {
      for (const name of queueNames) {
        const mine = jobs.filter((it) => it.job.queue === name);
        if (mine.length === 0) continue;
        await of(name).addBulk(
          mine.map((it) => ({ name: it.job.name, data: it.data, opts: { jobId: it.id } })),
        );
      }
    },
    every: async (job, everyMs) => {
      // A tick that is done is no news: kept, they would soon outnumber all else in a queue that is looked through all day.
      await of(job.queue).upsertJobScheduler(
        `tick-${job.name}`,
        { every: everyMs },
        { name: job.name, data: {}, opts: { attempts: 1, removeOnComplete: true } },
      );
    },
    close: async () => {
      await Promise.all([...byName.values()].map((queue) => queue.close()));
    },
  };
};
