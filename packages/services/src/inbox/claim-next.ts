import { claimNextRow } from '@ballfirst/db/claims/claim-next';
import { requireStaff } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { claimExpiry } from './claim-minutes.ts';

/**
 * Takes the first row of the inbox that nobody holds, of one lead fault if asked. Two coaches at once get two rows; the
 * same request tried again gets the same one.
 */
export const claimNext = async ({ ctx, input }: Call<'claimNext'>): Promise<Reply<'claimNext'>> => {
  const { membershipId } = requireStaff(ctx);
  return once(ctx, 'claimNext', async (tx) => {
    const { academyId, requestId } = ctx;
    const now = ctx.resources.clock.now();
    const taken = await claimNextRow(tx, {
      ...{ academyId, membershipId, fault: input.fault, now, expiresAt: claimExpiry(now), requestId },
    });
    return { taken };
  });
};
