import { ProblemError } from '@ballfirst/contracts/problems';
import { causes } from '@ballfirst/library/causes';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { teachingClipsOf } from './teaching-clips-of.ts';

/** Keeps the address of a film that explains a cause, in place of an earlier one. @throws ProblemError not-found */
export const keepTeachingClip = async ({
  ctx,
  input,
}: Call<'keepTeachingClip'>): Promise<Reply<'keepTeachingClip'>> => {
  const { membershipId } = requireStaff(ctx);
  const { cause, title } = input;
  if (!causes.some(({ id }) => id === cause)) throw new ProblemError('not-found');
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const kept = {
      ...{
        title,
        url: new URL(input.url).href,
        words: input.words,
        byMembership: membershipId,
        at: ctx.resources.clock.now(),
        removedAt: null,
      },
    };
    await tx.teachingClip.upsert({
      where: { academyId_cause: { academyId, cause } },
      create: { academyId, cause, ...kept },
      update: kept,
    });
    await audit(tx, ctx, { action: 'keep-teaching-clip', subject: `cause:${cause}` });
    return teachingClipsOf(tx, academyId);
  });
};
