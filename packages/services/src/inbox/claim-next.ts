import { ProblemError } from '@ballfirst/contracts/problems';
import { claimNextOnce, claimNextRow } from '@ballfirst/db/claims/claim-next';
import { requireStaff } from '../authorise.ts';
import type { Call, Reply } from '../operation-types.ts';
import { waitedTooLong } from '../waited-too-long.ts';
import { claimExpiry } from './claim-minutes.ts';

/**
 * Takes the first row of the inbox that nobody holds, of one lead fault if asked. Two coaches at once get two rows; the
 * same request tried again gets the same one.
 * @throws ProblemError not-allowed, key-used-otherwise, same-key-at-work
 */
export const claimNext = async ({ ctx, input }: Call<'claimNext'>): Promise<Reply<'claimNext'>> => {
  const { membershipId } = requireStaff(ctx);
  const { academyId, requestId, once } = ctx;
  const { db, clock } = ctx.resources;
  const now = clock.now();
  const it = { academyId, membershipId, fault: input.fault, now, expiresAt: claimExpiry(now), requestId };
  if (once === undefined) return { taken: await claimNextRow(db, it) };
  try {
    const { outcome, body } = await claimNextOnce(db, it, once);
    if (outcome === 'otherwise') throw new ProblemError('key-used-otherwise');
    return JSON.parse(body) as Reply<'claimNext'>;
  } catch (error) {
    if (waitedTooLong(error)) throw new ProblemError('same-key-at-work');
    throw error;
  }
};
