import { namedCall, type Pooled } from '../named-call.ts';

export type OutboxRow = { id: string; academyId: string; kind: string; payload: unknown; createdAt: Date };

const statement = { name: 'take_outbox', text: 'SELECT * FROM crossing.take_outbox($1, $2, $3)' };

/**
 * Takes unsent events, oldest first, passing over those another relay holds. One taken more than `retakeAfterSeconds`
 * ago and never marked sent is taken again: at least once.
 */
export const takeOutbox = (
  db: Pooled,
  input: { limit: number; now: Date; retakeAfterSeconds: number },
): Promise<OutboxRow[]> =>
  namedCall<OutboxRow>(db, statement, [input.limit, input.now, input.retakeAfterSeconds]);
