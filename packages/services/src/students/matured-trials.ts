import type { Tx } from '@ballfirst/db/with-academy';
import { shareOf } from '@ballfirst/progress/shares';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';

/** A trial is judged so many days after its end: who joins later counts as not joined, in every cohort alike. */
const horizonDays = 7;
const dayMs = 86_400_000;

/** Of the trials whose time to decide is over, the share that became paid by then, with its 95 % Wilson interval. */
export const maturedTrials = async (tx: Tx, ctx: Context): Promise<Reply<'readTrials'>['matured']> => {
  const endedBy = new Date(ctx.resources.clock.now().getTime() - horizonDays * dayMs);
  const [counts] = await tx.$queryRaw<{ trials: number; paid: number }[]>`
    SELECT count(*)::int AS trials, count(*) FILTER (WHERE EXISTS (
      SELECT FROM public.standing_change c
      WHERE c.academy_id = t.academy_id AND c.student_id = t.id AND c.to_standing = 'paid'
        AND c.at >= t.trial_started_at AND c.at <= t.trial_ends_at + make_interval(days => ${horizonDays}::int)
    ))::int AS paid
    FROM public.student t
    WHERE t.academy_id = ${ctx.academyId}::uuid AND t.trial_started_at IS NOT NULL
      AND t.trial_ends_at <= ${endedBy}::timestamptz`;
  const { trials, paid } = counts ?? { trials: 0, paid: 0 };
  const share = shareOf(paid, trials);
  return { trials, paid, share: share?.share ?? null, low: share?.low ?? null, high: share?.high ?? null };
};
