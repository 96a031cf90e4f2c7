import { weekOf } from '@ballfirst/calendar/week-of';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { PracticeEntry } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import { addEntry } from '@ballfirst/progress/add-to-week';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { onceEffect } from '../effects/once-effect.ts';
import { inTransaction } from '../in-transaction.ts';
import { countedEntry } from './counted.ts';
import { keepWeek, lockWeek } from './lock-week.ts';
import { loggedEntry } from './week-items.ts';

/** Whether the week has counted no other entry of that day; asked while the week is locked. */
const firstOfItsDay = async (tx: Tx, ctx: Context, entry: PracticeEntry): Promise<boolean> => {
  const { academyId } = ctx;
  const others = await tx.practiceEntry.findMany({
    where: { academyId, studentId: entry.studentId, localDate: entry.localDate, id: { not: entry.id } },
    select: { id: true },
  });
  const counted = await tx.effect.count({
    where: { academyId, name: countedEntry, eventId: { in: others.map(({ id }) => id) } },
  });
  return counted === 0;
};

/**
 * Adds a practice entry to its student's week (event practice.logged), once for the entry, in any order and at any
 * time: the counts equal those from scratch. The week is locked first, so everyone takes locks in the same order.
 * @returns added: false when the week had counted it
 * @throws ProblemError not-found
 */
export const rollUpEntry = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { entryId: string };
}): Promise<{ added: boolean }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const entry = await tx.practiceEntry.findUnique({
      where: { academyId_id: { academyId, id: input.entryId } },
    });
    if (entry === null) throw new ProblemError('not-found');
    const week = await lockWeek(tx, ctx, entry.studentId, weekOf(entry.localDate));
    const added = await onceEffect({ ...ctx, tx }, { eventId: entry.id, name: countedEntry }, async () => {
      await keepWeek(tx, ctx, addEntry(week, loggedEntry(entry), await firstOfItsDay(tx, ctx, entry)));
      return true;
    });
    return { added: added ?? false };
  });
};
