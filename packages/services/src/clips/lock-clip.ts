import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { ClipRow } from '../rows.ts';

/** A clip held against other writers to the end of the transaction. @throws ProblemError not-found */
export const lockClip = async (tx: Tx, ctx: Context, id: string): Promise<ClipRow> => {
  const { academyId } = ctx;
  await tx.$queryRaw`SELECT id FROM public.clip
    WHERE academy_id = ${academyId}::uuid AND id = ${id}::uuid FOR UPDATE`;
  const row = await tx.clip.findUnique({ where: { academyId_id: { academyId, id } } });
  if (row === null) throw new ProblemError('not-found');
  return row;
};
