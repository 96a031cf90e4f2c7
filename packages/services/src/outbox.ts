import { type EventKind, type EventPayload, events } from '@ballfirst/contracts/events';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from './context.ts';

/** Tells the world what happened, in the verb's own transaction: a kind and ids. */
export const emit = async <K extends EventKind>(
  tx: Tx,
  ctx: Context,
  kind: K,
  payload: EventPayload<K>,
): Promise<void> => {
  // createMany: a plain INSERT; the app role may write events, not read them.
  await tx.outbox.createMany({
    data: {
      id: newId(),
      academyId: ctx.academyId,
      kind,
      payload: events[kind].parse(payload),
      createdAt: ctx.resources.clock.now(),
    },
  });
};
