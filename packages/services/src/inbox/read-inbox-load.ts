import { workingHoursBetween } from '@ballfirst/calendar/working-hours-between';
import { readInboxLoad as readLoad } from '@ballfirst/db/reads/inbox-load';
import { workingHoursOf } from '../academy/working-hours-of.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { dayEdges } from './block-of.ts';

/** How long a coach takes for a reply, all in all. Common practice, no source. */
const minutesAReply = 5;
const atMost = 999;

/**
 * Whether what is promised for today can still be kept by the coaches there are in what is left of the working day.
 * @throws ProblemError not-allowed
 */
export const readInboxLoad = async ({ ctx }: Call<'readInboxLoad'>): Promise<Reply<'readInboxLoad'>> => {
  requireStaff(ctx);
  const { academyId } = ctx;
  const { clock, db } = ctx.resources;
  const now = clock.now();
  const academy = await inTransaction(ctx, (tx) =>
    tx.academy.findUniqueOrThrow({ where: { id: academyId } }),
  );
  const { tomorrow } = dayEdges(now, academy.zone);
  const { late, due, coaches } = await readLoad(db, { academyId, now, until: tomorrow, atMost });
  const hours = workingHoursBetween(now, tomorrow, workingHoursOf(academy));
  const workingMinutesLeft = Math.floor(hours * 60);
  const canAnswer = Math.floor((workingMinutesLeft * coaches) / minutesAReply);
  return {
    ...{ late, dueToday: due, coaches, workingMinutesLeft, canAnswer },
    // A promise that has passed cannot be kept; what is due may be, if there is time for both.
    beyond: Math.min(due, Math.max(0, late + due - canAnswer)),
  };
};
