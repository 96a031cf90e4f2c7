import { namedCall, type Pooled } from '../named-call.ts';

/** The channel that every API process listens on. */
export const liveChannel = 'ballfirst_live';

/** An event as it is announced: ids and a kind, never what they stand for. */
export type Announced = {
  readonly id: string;
  readonly academyId: string;
  readonly kind: string;
  readonly payload: unknown;
};

const statement = {
  name: 'announce',
  text: `SELECT pg_notify('${liveChannel}', line) FROM unnest($1::text[]) AS line`,
};

/**
 * Tells every listening process of events, in one short transaction of its own: NOTIFY holds a lock of the whole cluster
 * while it commits, so it must never stand in a verb's transaction.
 */
export const announce = async (db: Pooled, events: readonly Announced[]): Promise<void> => {
  if (events.length === 0) return;
  await namedCall(db, statement, [
    events.map(({ id, academyId, kind, payload }) => JSON.stringify({ id, academyId, kind, payload })),
  ]);
};
