import { namedCall, type Pooled } from '../named-call.ts';

const statement = {
  name: 'open_session',
  text: 'SELECT crossing.open_session($1, $2, $3, $4, $5, $6, $7)',
};

/** Writes a session. `tokenHash` is the SHA-256 of the token (32 bytes); the token itself is never stored. */
export const openSession = async (
  db: Pooled,
  input: {
    id: string;
    personId: string;
    tokenHash: Uint8Array;
    academyId: string | null;
    now: Date;
    expiresAt: Date;
    device: string;
  },
): Promise<void> => {
  await namedCall(db, statement, [
    input.id,
    input.personId,
    Buffer.from(input.tokenHash),
    input.academyId,
    input.now,
    input.expiresAt,
    input.device,
  ]);
};
