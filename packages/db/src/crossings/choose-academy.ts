import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'choose_academy', text: 'SELECT crossing.choose_academy($1, $2, $3) AS chosen' };

/**
 * Points a live session at one of its person's academies.
 * @returns false when the session is not live or the person has no running membership there
 */
export const chooseAcademy = async (
  db: Pooled,
  input: { tokenHash: Uint8Array; academyId: string; now: Date },
): Promise<boolean> => {
  const [row] = await namedCall<{ chosen: boolean }>(db, statement, [
    Buffer.from(input.tokenHash),
    input.academyId,
    input.now,
  ]);
  return row?.chosen ?? false;
};
