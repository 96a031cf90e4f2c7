import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { teachingClipsOf } from './teaching-clips-of.ts';

/** The academy's teaching clips, one a cause. */
export const listTeachingClips = async ({
  ctx,
}: Pick<Call<'listTeachingClips'>, 'ctx'>): Promise<Reply<'listTeachingClips'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, (tx) => teachingClipsOf(tx, ctx.academyId));
};
