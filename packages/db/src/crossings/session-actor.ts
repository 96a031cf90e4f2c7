import { namedCall, type Pooled } from '../named-call.ts';

/** Who a session speaks for. Academy fields are null together: none chosen, or the membership has ended. */
export type SessionActor = {
  sessionId: string;
  personId: string;
  name: string;
  email: string;
  academyId: string | null;
  academySlug: string | null;
  academyName: string | null;
  academyZone: string | null;
  membershipId: string | null;
  role: 'coach' | 'manager' | 'student' | null;
  studentId: string | null;
  createdAt: Date;
  rotatedAt: Date;
  seenAt: Date;
  expiresAt: Date;
  /** True when the token is the one before the last rotation, still inside its grace: do not rotate again. */
  former: boolean;
};

const statement = { name: 'session_actor', text: 'SELECT * FROM crossing.session_actor($1, $2, $3)' };

/**
 * The actor of a live session in one statement, or null. Idle limits are the caller's to judge by `seenAt`.
 * `graceSeconds`: how long the token before the last rotation still counts (default 60).
 */
export const sessionActor = async (
  db: Pooled,
  input: { tokenHash: Uint8Array; now: Date; graceSeconds?: number },
): Promise<SessionActor | null> => {
  const [row] = await namedCall<SessionActor>(db, statement, [
    Buffer.from(input.tokenHash),
    input.now,
    input.graceSeconds ?? 60,
  ]);
  return row ?? null;
};
