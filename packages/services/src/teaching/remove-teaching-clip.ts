import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { teachingClipsOf } from './teaching-clips-of.ts';

/** Takes the teaching clip of a cause away; where there is none, nothing happens. */
export const removeTeachingClip = async ({
  ctx,
  input,
}: Call<'removeTeachingClip'>): Promise<Reply<'removeTeachingClip'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const { count } = await tx.teachingClip.updateMany({
      where: { academyId, cause: input.cause, removedAt: null },
      data: { removedAt: ctx.resources.clock.now() },
    });
    if (count > 0) await audit(tx, ctx, { action: 'remove-teaching-clip', subject: `cause:${input.cause}` });
    return teachingClipsOf(tx, academyId);
  });
};
