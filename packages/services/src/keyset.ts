import { ProblemError } from '@ballfirst/contracts/problems';

/** The place after which a page goes on: the sort key of its last row and, where keys are equal, the id. */
export type Place = { readonly key: string; readonly id: string };

const pattern = /^[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}$/;

/** A cursor is opaque to the caller: base64url of the place. */
export const cursorOf = (place: Place): string =>
  Buffer.from(JSON.stringify([place.key, place.id])).toString('base64url');

/** @throws ProblemError bad-request for a cursor that is not ours */
export const placeOf = (cursor: string): Place => {
  try {
    const parts: unknown = JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8'));
    if (Array.isArray(parts) && parts.length === 2) {
      const [key, id] = parts as unknown[];
      if (typeof key === 'string' && typeof id === 'string' && pattern.test(id)) return { key, id };
    }
  } catch {
    // Falls through to the one answer for every broken cursor.
  }
  throw new ProblemError('bad-request', 'This page cannot be continued. Load the list again.');
};

/** The same with an instant for a key. */
export const instantPlaceOf = (cursor: string): { key: Date; id: string } => {
  const place = placeOf(cursor);
  const key = new Date(place.key);
  if (Number.isNaN(key.getTime())) throw new ProblemError('bad-request');
  return { key, id: place.id };
};

/** Cuts a page of `limit` from `limit + 1` rows read and says where the next one goes on. */
export const pageOf = <Row>(
  rows: readonly Row[],
  limit: number,
  place: (row: Row) => Place,
): { items: Row[]; next: string | null } => {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return { items, next: rows.length > limit && last !== undefined ? cursorOf(place(last)) : null };
};
