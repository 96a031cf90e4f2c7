import type { PoolClient } from 'pg';
import type { Pooled } from './named-call.ts';

/**
 * Locks by name that hold across processes and go when their holder's process or connection goes. All locks of a
 * process share one connection, taken from its pool at the first use.
 */
export type SessionLocks = {
  /** False: another process has it, and was told that it is wanted. */
  take(name: string): Promise<boolean>;
  release(name: string): Promise<void>;
  close(): Promise<void>;
};

type Events = {
  /** Another process asks for a lock that may be ours. */
  readonly onWanted: (name: string) => void;
  /** The connection broke and every lock with it: work under them must stop. */
  readonly onLost: () => void;
};

const key = 'hashtextextended($1, 0)';

export const openSessionLocks = (db: Pooled, channel: string, events: Events): SessionLocks => {
  let opened: Promise<PoolClient> | null = null;
  const connect = async (): Promise<PoolClient> => {
    const client = await db.pool.connect();
    client.on('notification', (said) => events.onWanted(said.payload ?? ''));
    client.once('error', () => {
      opened = null;
      client.release(true);
      events.onLost();
    });
    await client.query(`LISTEN ${channel}`);
    return client;
  };
  const connected = (): Promise<PoolClient> => {
    opened ??= connect().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
  return {
    take: async (name) => {
      const client = await connected();
      const sql = `SELECT pg_try_advisory_lock(${key}) AS taken`;
      const { rows } = await client.query<{ taken: boolean }>(sql, [`${channel}:${name}`]);
      if (rows[0]?.taken) return true;
      await client.query('SELECT pg_notify($1, $2)', [channel, name]);
      return false;
    },
    release: async (name) => {
      // A connection that is gone has let go already.
      if (opened === null) return;
      await (await opened).query(`SELECT pg_advisory_unlock(${key})`, [`${channel}:${name}`]);
    },
    close: async () => {
      const client = await opened?.catch(() => null);
      opened = null;
      client?.release(true);
    },
  };
};
