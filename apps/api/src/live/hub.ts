import { type EventKind, liveKinds } from '@ballfirst/contracts/events';
import type { LiveMessage } from '@ballfirst/contracts/http/live';
import { Id } from '@ballfirst/contracts/words';
import { type Listening, listen } from '@ballfirst/db/live/listen';
import type { Log } from '@ballfirst/services/ports';
import { z } from 'zod';

const Line = z.object({
  id: Id,
  academyId: Id,
  kind: z.enum(liveKinds as unknown as [EventKind, ...EventKind[]]),
  payload: z.record(z.string(), z.unknown()),
});

/** One open page: what it is told. */
export type Follower = {
  readonly academyId: string;
  readonly told: (message: LiveMessage) => void;
  /** Some events may have been lost: read again. */
  readonly missed: () => void;
};

export type LiveHub = {
  follow(follower: Follower): () => void;
  stop(): Promise<void>;
};

/** Ids only, whatever else an event may carry. */
const idsOf = (payload: Readonly<Record<string, unknown>>): Record<string, string> =>
  Object.fromEntries(
    Object.entries(payload).filter((entry): entry is [string, string] => Id.safeParse(entry[1]).success),
  );

/**
 * Hands what the database announces to the open pages of the academy it happened in. One connection a process, opened
 * with the first page and kept.
 */
export const liveHub = (parts: { readonly url: string; readonly log: Log }): LiveHub => {
  const followers = new Set<Follower>();
  let listening: Listening | null = null;

  const onLine = (line: string): void => {
    let parsed: z.infer<typeof Line>;
    try {
      parsed = Line.parse(JSON.parse(line));
    } catch {
      // A newer version beside this one may announce what this one does not know.
      return;
    }
    const { id, academyId, kind, payload } = parsed;
    const message = { id, kind, ids: idsOf(payload) } as LiveMessage;
    for (const follower of followers) if (follower.academyId === academyId) follower.told(message);
  };
  return {
    follow: (follower) => {
      followers.add(follower);
      listening ??= listen({
        url: parts.url,
        onLine,
        onMissed: () => {
          for (const one of followers) one.missed();
        },
        onTrouble: (error) => parts.log.warn({ error: String(error) }, 'live: the connection broke'),
      });
      return () => followers.delete(follower);
    },
    stop: async () => {
      followers.clear();
      await listening?.stop();
    },
  };
};
