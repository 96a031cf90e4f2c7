import type { Tx } from '@ballfirst/db/with-academy';

/** The talk-throughs that were spoken to a clip, by id. */
export const talksOf = async (
  tx: Tx,
  of: { readonly academyId: string; readonly clipId: string },
): Promise<readonly string[]> => {
  const rows = await tx.talkThrough.findMany({ where: of, select: { id: true } });
  return rows.map(({ id }) => id);
};
