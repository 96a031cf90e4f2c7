import type { EventKind, EventPayload } from '@ballfirst/contracts/events';
import type { Database } from '@ballfirst/db/database';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';

/** Writes one event to the outbox, as a verb does. @returns its id */
export const announce = async <K extends EventKind>(
  db: Database,
  academyId: string,
  kind: K,
  payload: EventPayload<K>,
): Promise<string> => {
  const id = newId();
  await withAcademy(db, academyId, (tx) =>
    tx.outbox.createMany({ data: { id, academyId, kind, payload, createdAt: new Date() } }),
  );
  return id;
};
