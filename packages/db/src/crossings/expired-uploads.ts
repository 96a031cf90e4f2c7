import { namedCall, type Pooled } from '../named-call.ts';

export type ExpiredUpload = { academyId: string; clipId: string; expiresAt: Date };

const statement = { name: 'expired_uploads', text: 'SELECT * FROM crossing.expired_uploads($1, $2)' };

/** Uploads never finished whose time is over, earliest first. */
export const expiredUploads = (db: Pooled, input: { now: Date; limit?: number }): Promise<ExpiredUpload[]> =>
  namedCall<ExpiredUpload>(db, statement, [input.now, input.limit ?? 500]);
