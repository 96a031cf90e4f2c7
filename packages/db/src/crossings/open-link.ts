import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'open_link', text: 'SELECT crossing.open_link($1, $2, $3, $4, $5, $6, $7, $8)' };

type Of =
  | { kind: 'reset'; personId: string }
  | { kind: 'invitation'; academyId: string; invitationId: string };

/** Writes a single-use link by the hash of its token; the unused ones before it stop working. */
export const openLink = async (
  db: Pooled,
  input: { id: string; tokenHash: Uint8Array; of: Of; now: Date; expiresAt: Date },
): Promise<void> => {
  const { id, tokenHash, of, now, expiresAt } = input;
  const reset = of.kind === 'reset';
  await namedCall(db, statement, [
    id,
    of.kind,
    tokenHash,
    reset ? of.personId : null,
    reset ? null : of.academyId,
    reset ? null : of.invitationId,
    now,
    expiresAt,
  ]);
};
