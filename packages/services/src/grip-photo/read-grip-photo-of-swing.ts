import { requirePerson } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { gripPhotoOf } from './grip-photo-of.ts';

/** The photo of the grip that was sent with a swing, if there is one. @throws ProblemError not-found */
export const readGripPhotoOfSwing = async ({
  ctx,
  input,
}: Call<'readGripPhotoOfSwing'>): Promise<Reply<'readGripPhotoOfSwing'>> => {
  requirePerson(ctx);
  return inTransaction(ctx, async (tx) => {
    const { id } = await findSubmission(tx, ctx, input.id);
    const row = await tx.clip.findFirst({ where: { academyId: ctx.academyId, photoOf: id } });
    return { photo: row === null ? null : gripPhotoOf(row) };
  });
};
