import { localDate } from '@ballfirst/calendar/local-date';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { chooseNudge, type Nudge } from '@ballfirst/progress/choose-nudge';
import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { emit } from '../outbox.ts';
import type { StudentRow } from '../rows.ts';
import { lockStudent } from '../students/lock-student.ts';
import { quietOf } from '../students/quiet-of.ts';
import { mayRemindNow, nextLook } from './look-after-time.ts';
import { nudgeFacts } from './nudge-facts.ts';
import { raiseStuck } from './raise-stuck.ts';
import { writtenToday } from './written-today.ts';

/**
 * The daily look at one student: at most one reminder, on a day without any other letter, at nine on the student's wall
 * clock. A student who is stuck is put before the coaches.
 * Whoever pays, leaves, sends or practises meanwhile is looked at as they are now: nothing is planned ahead that
 * would have to be called off. A look that comes late, after eight in the evening or in the night, sends nothing.
 * @returns the reminder that was set going, or null
 * @throws ProblemError not-found
 */
export const lookAfterStudent = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { studentId: string };
}): Promise<{ nudge: Nudge | null }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const student = await lockStudent(tx, ctx, input.studentId);
    const { lookAfterAt } = student;
    const { zone } = student.membership;
    if (lookAfterAt !== null && lookAfterAt > now) return { nudge: null };
    await tx.student.update({
      where: { academyId_id: { academyId, id: student.id } },
      data: { lookAfterAt: nextLook(now, zone, quietOf(student)) },
    });
    // The first look only finds the hour, so that a new academy's students are not all written to at once.
    if (lookAfterAt === null) return { nudge: null };
    const facts = await nudgeFacts(tx, student, now);
    await raiseStuck(tx, ctx, student, facts);
    if (!(await mayBeWrittenTo(tx, student, now))) return { nudge: null };
    const sent = await tx.nudge.findMany({ where: { academyId, studentId: student.id } });
    const chosen = chooseNudge(
      facts,
      new Set(sent.map(({ kind, subject }) => `${kind} ${subject}`)),
      new Set(student.academy.nudgesOff),
    );
    if (chosen === null) return { nudge: null };
    const id = newId();
    await tx.nudge.create({
      data: { academyId, id, studentId: student.id, ...chosen, localDate: localDate(now, zone), at: now },
    });
    await audit(tx, ctx, {
      action: 'nudge',
      subject: `student:${student.id}`,
      detail: { kind: chosen.kind },
    });
    await emit(tx, ctx, 'nudge.due', { nudgeId: id });
    return { nudge: chosen.kind };
  });
};

const mayBeWrittenTo = async (tx: Tx, student: StudentRow, now: Date): Promise<boolean> => {
  const { membership, nudgesOffAt, standing } = student;
  if (nudgesOffAt !== null || membership.endedAt !== null) return false;
  if (standing !== 'trial' && standing !== 'paid') return false;
  if (!mayRemindNow(now, membership.zone, quietOf(student))) return false;
  return !(await writtenToday(tx, student, now));
};
