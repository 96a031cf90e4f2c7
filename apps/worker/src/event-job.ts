import { type EventKind, type EventPayload, events } from '@ballfirst/contracts/events';
import { Id } from '@ballfirst/contracts/words';
import { z } from 'zod';
import type { Job, JobGiven, QueueName } from './job.ts';

type Event<K extends EventKind> = { id: string; academyId: string; payload: EventPayload<K> };

/** A job that answers one kind of event; its data is the event as the outbox held it. */
export const eventJob = <K extends EventKind>(it: {
  name: string;
  queue: QueueName;
  on: K;
  handle: (given: JobGiven, event: Event<K>) => Promise<void>;
}): Job & { readonly on: K } => {
  const schema = z.object({ id: Id, academyId: Id, payload: events[it.on] });
  return {
    name: it.name,
    queue: it.queue,
    on: it.on,
    schema,
    handle: (given, data) => it.handle(given, schema.parse(data) as Event<K>),
  };
};
