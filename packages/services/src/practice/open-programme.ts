import { Plan } from '@ballfirst/contracts/http/review';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { buildProgramme } from './build-programme.ts';
import { builtFor } from './built-for.ts';

/** A student works on one movement: the programme before is closed and what it asked for is called off. */
const closeRunning = async (tx: Tx, ctx: Context, studentId: string): Promise<void> => {
  const { academyId } = ctx;
  const running = await tx.programme.findMany({
    where: { academyId, studentId, status: { in: ['open', 'held'] } },
  });
  const ids = running.map(({ id }) => id);
  await tx.programme.updateMany({
    where: { academyId, id: { in: ids } },
    data: { status: 'replaced', endedAt: ctx.resources.clock.now() },
  });
  await tx.checkIn.updateMany({
    where: { academyId, programmeId: { in: ids }, status: { in: ['scheduled', 'sent'] } },
    data: { status: 'cancelled' },
  });
};

/**
 * Turns the plan of a reply into the student's programme. One that answers a swing sent with pain begins on hold.
 * @returns its id
 * @throws ProblemError bad-request, wrong-state
 */
export const openProgramme = async (
  tx: Tx,
  ctx: Context,
  row: SubmissionRow,
  given: { readonly cause: string; readonly plan: unknown },
): Promise<string> => {
  const { academyId } = ctx;
  const plan = Plan.parse(given.plan);
  const built = buildProgramme(plan, builtFor(row.student));
  await closeRunning(tx, ctx, row.studentId);
  const id = newId();
  const hurts = row.pain !== 'none';
  await tx.programme.create({
    data: {
      academyId,
      id,
      studentId: row.studentId,
      submissionId: row.id,
      cause: given.cause,
      drillId: built.drill.id,
      drillVersion: built.drill.version,
      exaggeration: built.exaggeration,
      place: plan.place,
      weeklyMinutes: plan.weeklyMinutes,
      daysPerWeek: plan.daysPerWeek ?? null,
      sessionMinutes: plan.minutesPerDay ?? null,
      ballsAtMost: built.ballsAtMost,
      secondDrillId: plan.second?.drillId ?? null,
      secondMinutes: plan.second?.minutes ?? null,
      rung: built.firstRung.id,
      status: hurts ? 'held' : 'open',
      holdReason: hurts ? 'pain-with-swing' : null,
      createdAt: ctx.resources.clock.now(),
    },
  });
  return id;
};
