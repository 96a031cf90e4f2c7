import { namedCall, type Pooled } from '../named-call.ts';

export type ClipNotLookedAt = { academyId: string; clipId: string };

const statement = { name: 'clips_not_looked_at', text: 'SELECT * FROM crossing.clips_not_looked_at($1)' };

/** Ready clips of which nobody has said where to look first, the newest first. */
export const clipsNotLookedAt = (db: Pooled, input: { limit: number }): Promise<ClipNotLookedAt[]> =>
  namedCall<ClipNotLookedAt>(db, statement, [input.limit]);
