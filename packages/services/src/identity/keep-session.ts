import { rotateSession } from '@ballfirst/db/crossings/rotate-session';
import { touchSession } from '@ballfirst/db/crossings/touch-session';
import type { Resources } from '../context.ts';
import type { Opened, Session } from './call.ts';
import { newToken, rotateAfterHours, tokenHash } from './session.ts';

const touchAfterMs = 60_000;

/**
 * Keeps a session in use: notes that it was seen (at most once a minute) and gives it a new token once a day.
 * @returns the new token for the cookie, or null where the old one stays
 */
export const keepSession = async (call: {
  readonly resources: Resources;
  readonly session: Session;
  /** False for a caller that could not pass a new token on to the browser. */
  readonly mayRotate?: boolean;
}): Promise<Opened | null> => {
  const { actor, token } = call.session;
  const { db, clock } = call.resources;
  const now = clock.now();
  if (now.getTime() - actor.seenAt.getTime() >= touchAfterMs) {
    await touchSession(db, { sessionId: actor.sessionId, now });
  }
  if (call.mayRotate === false) return null;
  // A request with the former token must not rotate again: its sibling already holds the new one.
  if (actor.former || now.getTime() - actor.rotatedAt.getTime() < rotateAfterHours * 3_600_000) return null;
  const next = newToken();
  const rotated = await rotateSession(db, { tokenHash: tokenHash(token), newHash: tokenHash(next), now });
  return rotated ? { token: next, expiresAt: actor.expiresAt } : null;
};
