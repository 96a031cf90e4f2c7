import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { requireReader } from '../authorise.ts';
import type { Context } from '../context.ts';
import type { ClipRow } from '../rows.ts';

/** A clip the actor may see. @throws ProblemError not-found */
export const findClip = async (tx: Tx, ctx: Context, id: string): Promise<ClipRow> => {
  const { academyId } = ctx;
  const row = await tx.clip.findUnique({ where: { academyId_id: { academyId, id } } });
  if (row === null) throw new ProblemError('not-found');
  requireReader(ctx, row.studentId);
  return row;
};
