import type { Tx } from '@ballfirst/db/with-academy';
import { shareOf } from '@ballfirst/progress/shares';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';

/** A trial is judged so many days after its end: who joins later counts as not joined, in every cohort alike. */
const horizonDays = 7;

const dayMs = 86_400_000;

/** Of the trials whose time to decide is over, the share that became paid by then, with its 95 % Wilson interval. */
export const maturedTrials = async (tx: Tx, ctx: Context): Promise<Reply<'readTrials'>['matured']> => {
  const now = ctx.resources.clock.now();
  const rows = await tx.student.findMany({
    where: {
      academyId: ctx.academyId,
      trialStartedAt: { not: null },
      trialEndsAt: { lte: new Date(now.getTime() - horizonDays * dayMs) },
    },
    select: {
      trialEndsAt: true,
      standings: { where: { toStanding: 'paid' }, orderBy: { at: 'asc' }, take: 1, select: { at: true } },
    },
  });
  const paid = rows.filter(({ trialEndsAt, standings: [first] }) => {
    const end = trialEndsAt?.getTime() ?? 0;
    return first !== undefined && first.at.getTime() <= end + horizonDays * dayMs;
  }).length;
  const share = shareOf(paid, rows.length);
  return {
    trials: rows.length,
    paid,
    share: share?.share ?? null,
    low: share?.low ?? null,
    high: share?.high ?? null,
  };
};
