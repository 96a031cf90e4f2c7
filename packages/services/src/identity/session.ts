import { createHash, randomBytes } from 'node:crypto';
import { openSession as writeSession } from '@ballfirst/db/crossings/open-session';
import { newId } from '@ballfirst/db/ids';
import type { Resources } from '../context.ts';
import type { Opened } from './call.ts';

/** Limits of a session: ended when left alone for so long, and in any case after so long (OWASP ASVS 5.0, 7.3). */
export const idleDays = 14;
export const absoluteDays = 60;
/** A token is replaced after so many hours of use; the one before it counts for a minute more (requests in flight). */
export const rotateAfterHours = 24;

/** 256 random bits; what the cookie holds. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** What the database holds instead: nobody who reads it can sign in with it. */
export const tokenHash = (token: string): Uint8Array => createHash('sha256').update(token).digest();

/** Opens a session for a person and hands its token to the door. */
export const openSession = async (call: {
  readonly resources: Resources;
  readonly personId: string;
  readonly academyId: string | null;
  readonly device: string;
}): Promise<Opened> => {
  const now = call.resources.clock.now();
  const expiresAt = new Date(now.getTime() + absoluteDays * 86_400_000);
  const token = newToken();
  await writeSession(call.resources.db, {
    id: newId(),
    personId: call.personId,
    tokenHash: tokenHash(token),
    academyId: call.academyId,
    now,
    expiresAt,
    device: call.device.slice(0, 200),
  });
  return { token, expiresAt };
};
