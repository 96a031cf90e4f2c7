import { namedCall, type Pooled } from '../named-call.ts';

export type UnpreparedClip = {
  academyId: string;
  clipId: string;
  status: 'uploaded' | 'preparing';
  fence: number;
};

const statement = { name: 'unprepared_clips', text: 'SELECT * FROM crossing.unprepared_clips($1, $2, $3)' };

/** Clips uploaded, or in preparation, for longer than `olderThanSeconds`: their job was lost. */
export const unpreparedClips = (
  db: Pooled,
  input: { now: Date; olderThanSeconds: number; limit: number },
): Promise<UnpreparedClip[]> =>
  namedCall<UnpreparedClip>(db, statement, [input.now, input.olderThanSeconds, input.limit]);
