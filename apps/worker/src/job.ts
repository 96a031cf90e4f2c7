import type { Context, Resources } from '@ballfirst/services/context';
import type { z } from 'zod';

/** Three queues: what a person waits for, what takes long, what may wait for the night. */
export const queueNames = ['prompt', 'media', 'nightly'] as const;
export type QueueName = (typeof queueNames)[number];

export type JobGiven = {
  readonly resources: Resources;
  readonly queues: { add(jobs: readonly NewJob[]): Promise<void> };
  /** Aborted when the worker must stop. */
  readonly signal: AbortSignal;
  /** Context of one academy for the verbs, with the job as actor. */
  readonly contextOf: (academyId: string) => Context;
};

/** One piece of background work. It never sees the queue's own job object; it may run twice and must be safe to. */
export type Job<S extends z.ZodType = z.ZodType> = {
  readonly name: string;
  readonly queue: QueueName;
  readonly schema: S;
  readonly handle: (given: JobGiven, data: z.output<S>) => Promise<void>;
};

/** Work to be put into its queue; a job whose id is there already is passed over. */
export type NewJob = { readonly job: Job; readonly data: unknown; readonly id: string };

export const job = <S extends z.ZodType>(it: Job<S>): Job<S> => it;
