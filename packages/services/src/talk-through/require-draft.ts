import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { SubmissionRow } from '../rows.ts';

/**
 * The submission one works on, while its reply has not left.
 * @throws ProblemError as requireClaim, and wrong-state while the reply is on its way
 */
export const requireDraft = async (tx: Tx, ctx: Context, id: string): Promise<SubmissionRow> => {
  const row = await requireClaim(tx, ctx, id);
  if (row.reply?.status === 'sending') {
    throw new ProblemError('wrong-state', 'This reply is on its way. Take it back before you change it.');
  }
  return row;
};
