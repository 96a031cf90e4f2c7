import type { Resources } from '@ballfirst/services/context';
import type { Processor } from 'bullmq';
import { type JobGiven, type QueueName, queueNames } from './job.ts';
import type { OpenWorker, QueueBackend } from './queue-backend.ts';
import type { Queues } from './queues.ts';
import { jobNamed } from './registry.ts';

const concurrency: Record<QueueName, number> = { prompt: 4, media: 1, nightly: 1 };

export type Workers = { stop(deadlineMs: number): Promise<void> };

/** Starts one BullMQ worker a queue. The only place that sees the queue's own job object. */
export const startWorkers = (
  backend: QueueBackend,
  resources: Resources,
  queues: Queues,
  times: { lockMs: number; stalledMs: number },
): Workers => {
  const stopping = new AbortController();
  const process: Processor = async (queued) => {
    const job = jobNamed(queued.name);
    const given: JobGiven = {
      resources,
      queues,
      signal: stopping.signal,
      contextOf: (academyId) => ({
        academyId,
        actor: { kind: 'system', job: job.name },
        resources,
        requestId: `job-${queued.id ?? queued.name}`,
      }),
    };
    const began = performance.now();
    await job.handle(given, job.schema.parse(queued.data));
    resources.log.info(
      { job: job.name, id: queued.id, ms: Math.round(performance.now() - began) },
      'job done',
    );
  };
  const workers: OpenWorker[] = queueNames.map((name) => {
    const worker = backend.worker(name, process, {
      concurrency: concurrency[name],
      lockDuration: times.lockMs,
      stalledInterval: times.stalledMs,
      maxStalledCount: 5,
    });
    worker.on('failed', (queued, error) =>
      resources.log.warn({ job: queued?.name, id: queued?.id, error: error.message }, 'job failed'),
    );
    worker.on('stalled', (id) => resources.log.warn({ id }, 'job taken up again: its worker was gone'));
    worker.on('error', (error) => resources.log.error({ error: error.message }, 'queue error'));
    return worker;
  });
  return {
    stop: async (deadlineMs) => {
      stopping.abort();
      const closed = Promise.all(workers.map((worker) => worker.close()));
      const late = new Promise<void>((done) => setTimeout(done, deadlineMs).unref());
      await Promise.race([closed, late]);
    },
  };
};
