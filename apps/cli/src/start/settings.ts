import { resolve } from 'node:path';
import { Sentence } from '../sentence.ts';

/** Connection strings of the three roles that log in. */
export type DatabaseUrls = { readonly app: string; readonly owner: string; readonly queue: string };

export type StartSettings = {
  readonly home: string;
  readonly port: number;
  /** Undefined: the embedded server of the data folder. */
  readonly database: DatabaseUrls | undefined;
  readonly withDemo: boolean;
};

/**
 * What `npm start` was asked for.
 *
 * @throws Sentence for an argument, a port or a set of addresses that cannot be meant
 */
export function readSettings(
  env: Readonly<Record<string, string | undefined>>,
  args: readonly string[],
  root: string,
): StartSettings {
  const unknown = args.find((argument) => argument !== '--empty');
  if (unknown !== undefined) throw new Sentence(`start knows --empty and nothing else, not ${unknown}.`);
  return {
    home: resolve(root, env.BALLFIRST_HOME || '.data'),
    port: readPort(env.PORT || '4600'),
    database: readDatabase(env),
    withDemo: !args.includes('--empty'),
  };
}

function readPort(text: string): number {
  const port = Number(text);
  if (Number.isInteger(port) && port > 0 && port < 65_536) return port;
  throw new Sentence(`PORT is ${text}: it must be a whole number from 1 to 65535.`);
}

function readDatabase(env: Readonly<Record<string, string | undefined>>): DatabaseUrls | undefined {
  const { DATABASE_URL: app, DATABASE_OWNER_URL: owner, QUEUE_DATABASE_URL: queue } = env;
  if (!app && !owner && !queue) return undefined;
  if (app && owner && queue) return { app, owner, queue };
  throw new Sentence(
    'DATABASE_URL, DATABASE_OWNER_URL and QUEUE_DATABASE_URL go together: set all three or none.',
  );
}
