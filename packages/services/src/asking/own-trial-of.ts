import { Standing } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import type { StudentRow } from '../rows.ts';
import { trialDayOf } from '../students/trial-day-of.ts';
import { sameMoment } from '../then-and-now/same-moment.ts';
import { shownInclude, sideOf } from '../then-and-now/side-of.ts';

type OwnTrial = Reply<'readOwnTrial'>;

/** The student's own trial, as it stands. */
export const ownTrialOf = async (tx: Tx, ctx: Context, student: StudentRow): Promise<OwnTrial> => {
  const { academyId } = ctx;
  const own = { academyId, studentId: student.id };
  const now = ctx.resources.clock.now();
  const swings = await tx.submission.findMany({
    where: { ...own, status: { notIn: ['withdrawn'] } },
    include: shownInclude,
    orderBy: [{ sentAt: 'asc' }, { id: 'asc' }],
  });
  const first = swings[0] ?? null;
  const latest = swings.length > 1 ? (swings.at(-1) ?? null) : null;
  const clipIds = [first, latest].flatMap((swing) => swing?.clips.map(({ id }) => id) ?? []);
  const marks = await tx.mark.findMany({ where: { academyId, clipId: { in: clipIds } } });
  const pair = first === null || latest === null ? null : sameMoment(first.clips, latest.clips, marks);
  return {
    standing: Standing.parse(student.standing),
    day: trialDayOf({ ...student, zone: student.membership.zone }, now),
    days: student.academy.trialDays,
    endsAt: student.trialEndsAt?.toISOString() ?? null,
    priceWords: student.academy.priceWords,
    moment: pair?.moment ?? null,
    first: first === null ? null : await sideOf(ctx, first, pair?.before ?? null),
    latest: latest === null ? null : await sideOf(ctx, latest, pair?.after ?? null),
    replies: await tx.reply.count({ where: { academyId, status: 'sent', submission: own } }),
    practiceEntries: await tx.practiceEntry.count({ where: own }),
    rungsPassed: await tx.practiceEntry.count({ where: { ...own, verdict: 'passed' } }),
    joinAskedAt: student.joinAskedAt?.toISOString() ?? null,
  };
};
