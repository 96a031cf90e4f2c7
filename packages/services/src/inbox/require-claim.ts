import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { requireStaff } from '../authorise.ts';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';
import { claimOf } from '../submissions/submission-of.ts';
import { claimExpiry } from './claim-minutes.ts';

/** The later of the two: work never shortens a claim that was handed over for longer. */
const laterOf = (end: Date | null, now: Date): Date => {
  const renewed = claimExpiry(now);
  return end !== null && end > renewed ? end : renewed;
};

/**
 * The submission one works on: locked, waiting, under one's own claim; the work renews the claim.
 * @throws ProblemError not-found, already-answered, wrong-state, already-claimed, not-claimed
 */
export const requireClaim = async (tx: Tx, ctx: Context, id: string): Promise<SubmissionRow> => {
  const { membershipId } = requireStaff(ctx);
  const now = ctx.resources.clock.now();
  const row = await lockSubmission(tx, ctx, id);
  if (row.status === 'answered') throw new ProblemError('already-answered');
  if (row.status !== 'waiting') throw new ProblemError('wrong-state');
  const held = claimOf(row, now);
  if (held === null) throw new ProblemError('not-claimed');
  if (held.membershipId !== membershipId) throw new ProblemError('already-claimed');
  await tx.submission.update({
    where: { academyId_id: { academyId: ctx.academyId, id } },
    data: { claimExpiresAt: laterOf(row.claimExpiresAt, now) },
  });
  return row;
};

/** What a submission's row looks like without a claim. */
export const unclaimed = {
  claimedBy: null,
  claimedAt: null,
  claimExpiresAt: null,
  handedBy: null,
  handedWhy: null,
} as const;
