import { namedCall, type Pooled } from '../named-call.ts';

export type ClipToErase = { academyId: string; clipId: string };

const statement = { name: 'clips_to_erase', text: 'SELECT * FROM crossing.clips_to_erase($1, $2)' };

/** Clips whose files must go, the longest due first. */
export const clipsToErase = (db: Pooled, input: { now: Date; limit: number }): Promise<ClipToErase[]> =>
  namedCall<ClipToErase>(db, statement, [input.now, input.limit]);
