import { setTimeout as pause } from 'node:timers/promises';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Pooled } from '@ballfirst/db/named-call';
import { openSessionLocks } from '@ballfirst/db/session-locks';

/** The request that writes one upload just now. */
export type Writer = { silentForMs(): number; stop(): void };

export type UploadLocks = {
  /** Runs `act` as the only writer of an upload, in this process and in all others. @throws ProblemError upload-busy */
  alone<T>(clipId: string, writer: Writer, act: () => Promise<T>): Promise<T>;
  close(): Promise<void>;
};

/** A phone that changed from one network to another left a dead connection behind: its place is taken over. */
const silenceMs = 2_000;
const waitMs = 4_000;
const againMs = 100;

/**
 * One writer an upload. A second one waits a moment; it takes over from one that has gone silent, and is sent away from
 * one that is at work, so that two tabs do not cut each other.
 */
export const openUploadLocks = (db: Pooled): UploadLocks => {
  const writers = new Map<string, Writer>();
  const stopIfSilent = (clipId: string): void => {
    const writer = writers.get(clipId);
    if (writer !== undefined && writer.silentForMs() >= silenceMs) writer.stop();
  };
  const shared = openSessionLocks(db, 'upload', {
    onWanted: stopIfSilent,
    onLost: () => {
      for (const writer of writers.values()) writer.stop();
    },
  });

  const enter = async (clipId: string, writer: Writer): Promise<boolean> => {
    if (writers.has(clipId)) {
      stopIfSilent(clipId);
      return false;
    }
    writers.set(clipId, writer);
    const taken = await shared.take(clipId).catch((error: unknown) => {
      writers.delete(clipId);
      throw error;
    });
    if (!taken) writers.delete(clipId);
    return taken;
  };

  return {
    alone: async (clipId, writer, act) => {
      const until = performance.now() + waitMs;
      while (!(await enter(clipId, writer))) {
        if (performance.now() > until) throw new ProblemError('upload-busy');
        await pause(againMs);
      }
      try {
        return await act();
      } finally {
        await shared.release(clipId).catch(() => undefined);
        writers.delete(clipId);
      }
    },
    close: () => shared.close(),
  };
};
