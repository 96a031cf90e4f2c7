import { namedCall, type Pooled } from '../named-call.ts';

export type ReplyWithoutStills = { academyId: string; replyId: string; version: number };

const statement = {
  name: 'replies_without_stills',
  text: 'SELECT * FROM crossing.replies_without_stills($1)',
};

/** Sent replies whose pictures were never made or show an earlier version, the newest first. */
export const repliesWithoutStills = (db: Pooled, input: { limit: number }): Promise<ReplyWithoutStills[]> =>
  namedCall<ReplyWithoutStills>(db, statement, [input.limit]);
