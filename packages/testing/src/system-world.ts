import { Readable } from 'node:stream';
import type { Database } from '@ballfirst/db/database';
import type { Context } from '@ballfirst/services/context';
import type { Letter } from '@ballfirst/services/ports';

/** What a test of the worker's verbs looks at: letters by Message-ID as a folder keeps them, files, and a clock it moves. */
export type SystemWorld = {
  readonly contextOf: (academyId: string) => Context;
  /** One a Message-ID: sending it again replaces it. */
  readonly letters: Map<string, Letter>;
  /** Every sending, the repeated ones too. */
  readonly sendings: Letter[];
  readonly files: Map<string, Uint8Array>;
  now: Date;
  /** Called before a letter is kept: for a mail server that fails. */
  beforeSending: (letter: Letter) => void;
};

/** The system acting in any academy, with mail and files in memory. */
export const systemWorld = (db: Database, now: Date): SystemWorld => {
  const letters = new Map<string, Letter>();
  const sendings: Letter[] = [];
  const files = new Map<string, Uint8Array>();
  const bytesOf = (key: string): Uint8Array => {
    const bytes = files.get(key);
    if (bytes === undefined) throw new Error(`no file ${key}`);
    return bytes;
  };
  const world: SystemWorld = {
    letters,
    sendings,
    files,
    now,
    beforeSending: () => undefined,
    contextOf: (academyId) => ({
      academyId,
      actor: { kind: 'system', job: 'test' },
      requestId: 'test',
      resources: {
        db,
        clock: { now: () => world.now },
        blobs: {
          put: async (key, bytes) => {
            files.set(key, bytes);
          },
          size: async (key) => files.get(key)?.length ?? null,
          read: async (key, range) =>
            Readable.from([
              Buffer.from(bytesOf(key)).subarray(range?.start ?? 0, (range?.end ?? Infinity) + 1),
            ]),
          remove: async (key) => {
            files.delete(key);
          },
          localPath: (key) => `/nowhere/${key}`,
          settle: async () => undefined,
          fetch: async (key) => `/nowhere/${key}`,
          release: async () => undefined,
        },
        mailer: {
          send: async (letter) => {
            world.beforeSending(letter);
            sendings.push(letter);
            letters.set(letter.messageId, letter);
          },
        },
        log: { info: () => undefined, warn: () => undefined, error: () => undefined },
        publicUrl: 'https://lessons.example.test',
      },
    }),
  };
  return world;
};
