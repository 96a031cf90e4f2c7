import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { StudentRow } from '../rows.ts';
import { trialPeriod } from './trial-period.ts';

/** Where the academy starts trials at the first swing, this is it. @returns the end of the trial, null when on none */
export const startTrialAtFirstSwing = async (
  tx: Tx,
  ctx: Context,
  student: StudentRow,
): Promise<Date | null> => {
  const { academy, membership } = student;
  if (student.standing !== 'trial') return null;
  if (student.trialStartedAt !== null || academy.trialStarts !== 'first-swing') return student.trialEndsAt;
  const period = trialPeriod({
    startedAt: ctx.resources.clock.now(),
    days: academy.trialDays,
    zone: membership.zone,
  });
  await tx.student.update({
    where: { academyId_id: { academyId: ctx.academyId, id: student.id } },
    data: period,
  });
  return period.trialEndsAt;
};
