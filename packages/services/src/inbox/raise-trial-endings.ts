import { addWorkingHours } from '@ballfirst/calendar/add-working-hours';
import { workingDayHours, workingHoursOf } from '../academy/working-hours-of.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { raiseConcern } from './raise-concern.ts';

/** A trial is looked at so many working days before it ends. */
const workingDaysBefore = 2;
const atMost = 200;

type Unheard = { id: string; standing: string; trialEndsAt: Date };

/**
 * Puts trials before the coaches that are about to end while their students have not opened a reply of this trial. One
 * whose swing waits is left out: the swing stands in the inbox, and says it. Each trial once, whatever was done about it.
 * @returns how many were raised
 */
export const raiseTrialEndings = async ({ ctx }: { ctx: Context }): Promise<{ raised: number }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
    const working = workingHoursOf(academy);
    const until = addWorkingHours(now, workingDaysBefore * workingDayHours(working), working);
    const unheard = await tx.$queryRaw<Unheard[]>`
      SELECT t.id, t.standing, t.trial_ends_at AS "trialEndsAt" FROM public.student t
      WHERE t.academy_id = ${academyId}::uuid AND t.standing = 'trial'
        AND t.trial_ends_at > ${now}::timestamptz AND t.trial_ends_at <= ${until}::timestamptz
        AND NOT EXISTS (SELECT FROM public.concern c WHERE c.academy_id = t.academy_id AND c.student_id = t.id
          AND c.kind = 'trial-ending' AND c.raised_at >= t.trial_started_at)
        AND NOT EXISTS (SELECT FROM public.submission s WHERE s.academy_id = t.academy_id AND s.student_id = t.id
          AND s.status IN ('waiting', 'preparing'))
        AND NOT EXISTS (SELECT FROM public.submission s
          JOIN public.reply r ON r.academy_id = s.academy_id AND r.submission_id = s.id
          WHERE s.academy_id = t.academy_id AND s.student_id = t.id AND r.read_at >= t.trial_started_at)
      ORDER BY t.trial_ends_at, t.id LIMIT ${atMost}::integer`;
    let raised = 0;
    for (const student of unheard) {
      const it = { kind: 'trial-ending', subjectId: student.id, programmeId: null, pain: 'none' } as const;
      if ((await raiseConcern(tx, ctx, { ...it, student, academy })) !== null) raised += 1;
    }
    return { raised };
  });
};
