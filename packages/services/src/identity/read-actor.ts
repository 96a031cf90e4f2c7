import type { SessionActor } from '@ballfirst/db/crossings/session-actor';
import { sessionActor } from '@ballfirst/db/crossings/session-actor';
import type { Resources } from '../context.ts';
import { idleDays, tokenHash } from './session.ts';

/** Whom a session token speaks for, in one statement; null: unknown, ended, or left alone too long. */
export const readActor = async (call: {
  readonly resources: Resources;
  readonly token: string;
}): Promise<SessionActor | null> => {
  const now = call.resources.clock.now();
  const actor = await sessionActor(call.resources.db, { tokenHash: tokenHash(call.token), now });
  if (actor === null) return null;
  return now.getTime() - actor.seenAt.getTime() > idleDays * 86_400_000 ? null : actor;
};
