import type { Tx } from '@ballfirst/db/with-academy';
import { trialIncidence } from '@ballfirst/progress/trial-incidence';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';

type Course = { startedAt: Date; endsAt: Date; paidAt: Date | null; leftAt: Date | null };

/** The share of all begun trials that become paid, by day, the open ones counted as long as they have been followed. */
export const trialIncidenceOf = async (tx: Tx, ctx: Context): Promise<Reply<'readTrials'>['incidence']> => {
  const courses = await tx.$queryRaw<Course[]>`
    SELECT t.trial_started_at AS "startedAt", t.trial_ends_at AS "endsAt",
      min(c.at) FILTER (WHERE c.to_standing = 'paid') AS "paidAt",
      min(c.at) FILTER (WHERE c.to_standing = 'left') AS "leftAt"
    FROM public.student t
    LEFT JOIN public.standing_change c
      ON c.academy_id = t.academy_id AND c.student_id = t.id AND c.at >= t.trial_started_at
    WHERE t.academy_id = ${ctx.academyId}::uuid AND t.trial_started_at IS NOT NULL AND t.trial_ends_at IS NOT NULL
    GROUP BY t.id, t.trial_started_at, t.trial_ends_at`;
  const found = trialIncidence(courses, ctx.resources.clock.now());
  return found === null ? null : { ...found, steps: found.steps.map((step) => ({ ...step })) };
};
