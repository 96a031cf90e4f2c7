import { v7 } from 'uuid';

/** A new id: UUID version 7 (RFC 9562), minted here because PostgreSQL 15 has no `uuidv7()`; sorts by time of making. */
export const newId = (): string => v7();
