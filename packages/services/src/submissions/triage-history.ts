import { workingHoursBetween } from '@ballfirst/calendar/working-hours-between';
import type { Tx } from '@ballfirst/db/with-academy';
import type { FaultId } from '@ballfirst/library/types';
import { workingHoursOf } from '../academy/working-hours-of.ts';
import type { Context } from '../context.ts';
import { stepsNotPassed } from '../follow-ups/raise-stuck.ts';
import { faultOf } from '../review/fault-of.ts';
import type { TriageFacts, TriageHistory } from './triage-of.ts';

type Of = {
  readonly studentId: string;
  readonly answerBy: Date;
  readonly academy: TriageFacts['academy'];
};

/** How long a coach takes for a reply, all in all. Common practice, no source. */
const repliesAnHour = 12;
const countedAtMost = 999;

/** Whether more is promised until then than the coaches there are can answer in their working hours. */
const isAtRisk = async (tx: Tx, ctx: Context, { answerBy, academy }: Of): Promise<boolean> => {
  const now = ctx.resources.clock.now();
  const [load] = await tx.$queryRaw<{ late: number; due: number; coaches: number }[]>`
    SELECT late, due, coaches FROM public.inbox_load(${ctx.academyId}::uuid, ${now}, ${answerBy}, ${countedAtMost}::int)`;
  if (load === undefined || answerBy <= now) return false;
  const hours = workingHoursBetween(now, answerBy, workingHoursOf(academy));
  return load.late + load.due + 1 > hours * Math.max(1, load.coaches) * repliesAnHour;
};

/** The history by which a swing is placed, as it stands now. */
export const triageHistory = async (tx: Tx, ctx: Context, of: Of): Promise<TriageHistory> => {
  const { academyId } = ctx;
  const { studentId } = of;
  const programmes = await tx.programme.findMany({
    where: { academyId, studentId, status: { in: ['open', 'held', 'done'] } },
    include: { submission: true, student: { select: { hand: true } } },
  });
  const faultsOf = (...statuses: string[]): FaultId[] =>
    programmes
      .filter(({ status }) => statuses.includes(status))
      .map(({ submission, student }) => faultOf(null, { ...submission, hand: student.hand }));
  const [openProgrammeFault = null] = faultsOf('open', 'held');
  const open = programmes.find(({ status }) => status === 'open');
  return {
    openProgrammeFault,
    mendedFaults: faultsOf('done').filter((fault) => fault !== openProgrammeFault),
    stuck: open !== undefined && (await stepsNotPassed(tx, academyId, open.id)).length > 0,
    promiseAtRisk: await isAtRisk(tx, ctx, of),
  };
};
