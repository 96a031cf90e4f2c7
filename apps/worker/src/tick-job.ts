import { z } from 'zod';
import { type Job, type JobGiven, job, type QueueName } from './job.ts';

/** A job without data that runs at every tick; it looks in the database for what is due. */
export const tickJob = (it: {
  name: string;
  queue: QueueName;
  handle: (given: JobGiven) => Promise<void>;
}): Job => job({ ...it, schema: z.object({}) });
