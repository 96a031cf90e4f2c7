import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { settleSubmission } from '../submissions/settle-submission.ts';
import { originalKey } from './keys.ts';
import { lockClip } from './lock-clip.ts';

/** Gives up an upload whose time is over: quota back, bytes away, a submission that waits for it asks for another. */
export const expireClip = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<{ expired: boolean }> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const expired = await inTransaction(ctx, async (tx) => {
    const row = await lockClip(tx, ctx, input.clipId);
    if (row.status !== 'uploading' || row.expiresAt > ctx.resources.clock.now()) return false;
    await tx.clip.update({ where: { academyId_id: { academyId, id: row.id } }, data: { status: 'expired' } });
    await audit(tx, ctx, { action: 'expire-clip', subject: `clip:${row.id}` });
    if (row.submissionId !== null) await settleSubmission(tx, ctx, row.submissionId);
    return true;
  });
  if (expired) await ctx.resources.blobs.remove(originalKey({ academyId, clipId: input.clipId }));
  return { expired };
};
