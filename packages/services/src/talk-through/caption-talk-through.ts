import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { requireDraft } from './require-draft.ts';
import { talkInclude, talkThroughOf } from './talk-through-of.ts';

/**
 * Keeps what is said in words, for those who cannot hear it.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state
 */
export const captionTalkThrough = async ({
  ctx,
  input,
}: Call<'captionTalkThrough'>): Promise<Reply<'captionTalkThrough'>> => {
  requireStaff(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    const { id: submissionId } = await requireDraft(tx, ctx, input.id);
    const where = { academyId_submissionId: { academyId, submissionId } };
    if ((await tx.talkThrough.findUnique({ where })) === null) throw new ProblemError('not-found');
    const captions = input.captions.toSorted((a, b) => a.atMs - b.atMs);
    const row = await tx.talkThrough.update({ where, data: { captions }, include: talkInclude });
    await audit(tx, ctx, {
      action: 'caption-talk-through',
      subject: `submission:${submissionId}`,
      detail: { captions: captions.length },
    });
    return talkThroughOf(row);
  });
};
