import pg from 'pg';
import { liveChannel } from './announce.ts';

export type Listening = {
  /** Whether news arrive at this moment. */
  readonly connected: () => boolean;
  stop(): Promise<void>;
};

export type ListenOptions = {
  /** A session connection of the role `app`: no pooler that shares sessions may stand before it. */
  readonly url: string;
  readonly onLine: (line: string) => void;
  /** Called whenever it listens again after a break: what was said in between is lost. */
  readonly onMissed: () => void;
  readonly onTrouble: (error: unknown) => void;
  /** Wait before the first new try; doubled by each failure up to `longestPauseMs`. */
  readonly pauseMs?: number;
};

const longestPauseMs = 10_000;

/** Listens on one connection of its own and makes a new one whenever it breaks, until stopped. */
export const listen = (options: ListenOptions): Listening => {
  const { url, onLine, onMissed, onTrouble, pauseMs = 250 } = options;
  let client: pg.Client | null = null;
  let timer: NodeJS.Timeout | undefined;
  let connected = false;
  let stopped = false;
  let failures = 0;
  let broke = false;

  const again = (error: unknown): void => {
    const wasConnected = connected;
    connected = false;
    client = null;
    if (stopped) return;
    if (wasConnected || failures === 0) onTrouble(error);
    broke = true;
    timer = setTimeout(() => void connect(), Math.min(longestPauseMs, pauseMs * 2 ** failures));
    timer.unref();
    failures += 1;
  };

  const connect = async (): Promise<void> => {
    const next = new pg.Client({
      connectionString: url,
      application_name: 'ballfirst-live',
      connectionTimeoutMillis: 5_000,
      keepAlive: true,
    });
    client = next;
    let over = false;
    const end = (error: unknown): void => {
      if (over) return;
      over = true;
      next.end().catch(() => undefined);
      again(error);
    };
    next.on('error', end);
    next.on('end', () => end(new Error('the connection ended')));
    next.on('notification', ({ payload }) => onLine(payload ?? ''));
    try {
      await next.connect();
      await next.query(`LISTEN ${liveChannel}`);
      if (over) return;
      connected = true;
      failures = 0;
      if (broke) onMissed();
      broke = false;
    } catch (error) {
      end(error);
    }
  };

  void connect();
  return {
    connected: () => connected,
    stop: async () => {
      stopped = true;
      clearTimeout(timer);
      await client?.end().catch(() => undefined);
    },
  };
};
