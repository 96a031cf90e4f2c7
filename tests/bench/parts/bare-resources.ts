import type { openDatabase } from '@ballfirst/db/database';

const away = (): never => {
  throw new Error('not needed here');
};

/** What a verb needs that touches the database alone: no files, no mail, nothing logged. */
export const bareResources = (db: ReturnType<typeof openDatabase>) => ({
  db,
  clock: { now: () => new Date() },
  publicUrl: 'http://127.0.0.1',
  mailer: { send: away },
  blobs: {
    ...{ put: away, size: away, read: away, remove: away },
    ...{ localPath: away, settle: away, fetch: away, release: away },
  },
  log: { info: () => undefined, warn: () => undefined, error: () => undefined },
});
