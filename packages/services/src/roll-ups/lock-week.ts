import type { Tx } from '@ballfirst/db/with-academy';
import { emptyWeek, type WeekRow } from '@ballfirst/progress/week-row';
import type { Context } from '../context.ts';

/** A student's week, held against other writers to the end of the transaction; an empty one is made where there is none. */
export const lockWeek = async (tx: Tx, ctx: Context, studentId: string, week: string): Promise<WeekRow> => {
  const { academyId } = ctx;
  await tx.rollUp.createMany({
    data: [{ academyId, ...emptyWeek(studentId, week), updatedAt: ctx.resources.clock.now() }],
    skipDuplicates: true,
  });
  await tx.$queryRaw`SELECT week FROM public.roll_up
    WHERE academy_id = ${academyId}::uuid AND student_id = ${studentId}::uuid AND week = ${week} FOR UPDATE`;
  return tx.rollUp.findUniqueOrThrow({
    where: { academyId_studentId_week: { academyId, studentId, week } },
    omit: { academyId: true, updatedAt: true },
  });
};

/** Writes the week back. */
export const keepWeek = async (tx: Tx, ctx: Context, row: WeekRow): Promise<void> => {
  const { academyId } = ctx;
  const { studentId, week, ...counts } = row;
  await tx.rollUp.update({
    where: { academyId_studentId_week: { academyId, studentId, week } },
    data: { ...counts, updatedAt: ctx.resources.clock.now() },
  });
};
