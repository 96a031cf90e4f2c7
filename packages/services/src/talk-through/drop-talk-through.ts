import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { talkKey } from '../clips/keys.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { requireDraft } from './require-draft.ts';

/**
 * Takes the talk-through away from the draft; doing it twice is no error.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state
 */
export const dropTalkThrough = async ({
  ctx,
  input,
}: Call<'dropTalkThrough'>): Promise<Reply<'dropTalkThrough'>> => {
  requireStaff(ctx);
  const { academyId } = ctx;
  const dropped = await inTransaction(ctx, async (tx) => {
    const { id: submissionId } = await requireDraft(tx, ctx, input.id);
    const where = { academyId_submissionId: { academyId, submissionId } };
    const row = await tx.talkThrough.findUnique({ where });
    if (row === null) return null;
    await tx.talkThrough.delete({ where });
    await audit(tx, ctx, { action: 'drop-talk-through', subject: `submission:${submissionId}` });
    return row;
  });
  if (dropped !== null) {
    await ctx.resources.blobs.remove(talkKey({ academyId, clipId: dropped.clipId }, dropped.id));
  }
  return null;
};
