import { ProblemError } from '@ballfirst/contracts/problems';
import { drillById } from '@ballfirst/library/drills';
import { type Nudge, nudges } from '@ballfirst/progress/choose-nudge';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { newToken } from '../identity/session.ts';
import { inTransaction } from '../in-transaction.ts';
import { nudgeLetter } from './letters/nudge.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

const nudgeOf = (kind: string): Nudge => {
  const found = nudges.find((one) => one === kind);
  if (found === undefined) throw new RangeError(`No reminder is called "${kind}".`);
  return found;
};

/** Sends a reminder (event nudge.due). Whoever ended reminders since, or has left, is not written to. @throws ProblemError not-found */
export const tellNudge = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; nudgeId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const found = await inTransaction(ctx, async (tx) => {
    const nudge = await tx.nudge.findUnique({
      where: { academyId_id: { academyId, id: input.nudgeId } },
      include: { student: true },
    });
    if (nudge === null) throw new ProblemError('not-found');
    const programme = await tx.programme.findFirst({
      where: { academyId, studentId: nudge.studentId, status: 'open' },
    });
    const held = await tx.programme.count({
      where: { academyId, studentId: nudge.studentId, status: 'held' },
    });
    await tx.student.updateMany({
      where: { academyId, id: nudge.studentId, stopToken: null },
      data: { stopToken: newToken() },
    });
    const { stopToken } = await tx.student.findUniqueOrThrow({
      where: { academyId_id: { academyId, id: nudge.studentId } },
    });
    return { nudge, programme, held: held > 0, stopToken: stopToken ?? '' };
  });
  const { nudge, programme, held, stopToken } = found;
  const { nudgesOffAt, standing } = nudge.student;
  if (nudgesOffAt !== null || (standing !== 'trial' && standing !== 'paid')) return toldNobody;
  // Pain since this morning: nobody is asked to practise or film.
  if (held && nudge.kind !== 'reply-unread' && nudge.kind !== 'trial-ending') return toldNobody;
  const reader = await studentToWriteTo(ctx, nudge.studentId);
  if (reader === null) return toldNobody;
  const { academy, membership } = reader.student;
  const letter = nudgeLetter({
    kind: nudgeOf(nudge.kind),
    about: nudge.subject,
    name: membership.name,
    academyName: academy.name,
    publicUrl: resources.publicUrl,
    priceWords: academy.priceWords,
    drill: programme === null ? null : drillById(programme.drillId),
    hand: reader.hand,
    stopUrl: `${resources.publicUrl}/reminders#${stopToken}`,
  });
  return sendToStudent(ctx, {
    eventId: input.eventId,
    kind: `nudge-${nudge.kind}`,
    reader,
    letter,
    stopUrl: `${resources.publicUrl}/api/reminders/stop/${stopToken}`,
  });
};
