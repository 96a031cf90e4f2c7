import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'invitation_of_link', text: 'SELECT * FROM crossing.invitation_of_link($1, $2)' };

/** The invitation behind a token, or null when its link does not work (any more). */
export const invitationOfLink = async (
  db: Pooled,
  input: { tokenHash: Uint8Array; now: Date },
): Promise<{ academyId: string; invitationId: string } | null> => {
  const [row] = await namedCall<{ academyId: string; invitationId: string }>(db, statement, [
    input.tokenHash,
    input.now,
  ]);
  return row ?? null;
};
