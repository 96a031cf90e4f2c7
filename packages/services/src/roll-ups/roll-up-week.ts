import { addDays } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import { weekOf } from '@ballfirst/calendar/week-of';
import { ProblemError } from '@ballfirst/contracts/problems';
import { rollUp } from '@ballfirst/progress/roll-up';
import { emptyWeek, type WeekRow } from '@ballfirst/progress/week-row';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { countedEntry, countedSwing } from './counted.ts';
import { keepWeek, lockWeek } from './lock-week.ts';
import { loggedEntry, sentSwing } from './week-items.ts';

/**
 * Counts one student's week from scratch, `week` being its Monday. What it takes in is marked as counted.
 * @throws ProblemError not-found; RangeError when `week` is no Monday
 */
export const rollUpWeek = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { studentId: string; week: string };
}): Promise<WeekRow> => {
  requireSystem(ctx);
  const { studentId, week } = input;
  if (weekOf(week) !== week) throw new RangeError(`${week} is not a Monday.`);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const student = await tx.student.findUnique({
      where: { academyId_id: { academyId, id: studentId } },
      include: { membership: true },
    });
    if (student === null) throw new ProblemError('not-found');
    const { zone } = student.membership;
    const next = addDays(week, 7);
    const midnight = (day: string): Date => localDueInstant({ zone, localDate: day, localTime: '00:00' });
    await lockWeek(tx, ctx, studentId, week);
    const entries = await tx.practiceEntry.findMany({
      where: { academyId, studentId, localDate: { gte: week, lt: next } },
    });
    const swings = await tx.submission.findMany({
      where: { academyId, studentId, sentAt: { gte: midnight(week), lt: midnight(next) } },
    });
    const [row = emptyWeek(studentId, week)] = rollUp(
      entries.map(loggedEntry),
      swings.map((swing) => sentSwing(swing, zone)),
    );
    const at = ctx.resources.clock.now();
    const counted = [
      ...entries.map(({ id }) => ({ academyId, eventId: id, name: countedEntry, at })),
      ...swings.map(({ id }) => ({ academyId, eventId: id, name: countedSwing, at })),
    ];
    await tx.effect.createMany({ data: counted, skipDuplicates: true });
    await keepWeek(tx, ctx, row);
    return row;
  });
};
