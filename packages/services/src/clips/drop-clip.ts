import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireReader, requireStudent } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { originalKey } from './keys.ts';
import { lockClip } from './lock-clip.ts';

/**
 * A student chose another video: the upload begun before is given up, its place is free and its bytes go.
 * @throws ProblemError not-found, wrong-state when it has arrived or was sent to a coach
 */
export const dropClip = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<void> => {
  requireStudent(ctx);
  const { academyId } = ctx;
  await inTransaction(ctx, async (tx) => {
    const row = await lockClip(tx, ctx, input.clipId);
    requireReader(ctx, row.studentId);
    if (row.status === 'expired') throw new ProblemError('not-found');
    if (row.status !== 'uploading' || row.submissionId !== null) throw new ProblemError('wrong-state');
    await tx.clip.update({ where: { academyId_id: { academyId, id: row.id } }, data: { status: 'expired' } });
    await audit(tx, ctx, { action: 'drop-clip', subject: `clip:${row.id}` });
  });
  await ctx.resources.blobs.remove(originalKey({ academyId, clipId: input.clipId }));
};
