import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { emit } from '../outbox.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';
import { unclaimed } from './require-claim.ts';

/** Takes away a claim that was left alone past its end. @returns lapsed: false when it was renewed meanwhile */
export const lapseClaim = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { submissionId: string };
}): Promise<{ lapsed: boolean }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await lockSubmission(tx, ctx, input.submissionId);
    const { claimExpiresAt } = row;
    if (claimExpiresAt === null || claimExpiresAt > ctx.resources.clock.now()) return { lapsed: false };
    await tx.submission.update({
      where: { academyId_id: { academyId: ctx.academyId, id: row.id } },
      data: { ...unclaimed, version: { increment: 1 } },
    });
    await audit(tx, ctx, { action: 'lapse-claim', subject: `submission:${row.id}` });
    await emit(tx, ctx, 'submission.lapsed', { submissionId: row.id });
    return { lapsed: true };
  });
};
