import type { WorkingHours } from '@ballfirst/calendar/working-hours';
import { workingHoursBetween } from '@ballfirst/calendar/working-hours-between';
import type { Prisma } from '@ballfirst/db/generated/client';
import { trialDay } from '@ballfirst/progress/trial-day';
import type { Reply } from '../operation-types.ts';
import { trialPeriod } from './trial-period.ts';
import { nextAction, trialStop } from './trial-stop.ts';

/** What a trial's line is made from. */
export const trialInclude = {
  membership: true,
  submissions: {
    orderBy: { sentAt: 'asc' },
    select: { sentAt: true, status: true, reply: { select: { status: true, sentAt: true, readAt: true } } },
  },
  practiceEntries: { orderBy: { at: 'asc' }, select: { at: true, verdict: true } },
} as const satisfies Prisma.StudentInclude;
export type TrialStudent = Prisma.StudentGetPayload<{ include: typeof trialInclude }>;

const iso = (at: Date | null | undefined): string | null => at?.toISOString() ?? null;

/** One open trial. One that begins with the first swing, before it: day 0, and the end it would have from today. */
export const trialRowOf = (
  row: TrialStudent,
  academy: { readonly trialDays: number; readonly working: WorkingHours },
  now: Date,
): Reply<'readTrials'>['items'][number] => {
  const { submissions, practiceEntries, membership, trialStartedAt } = row;
  const period = { startedAt: trialStartedAt ?? now, days: academy.trialDays, zone: membership.zone };
  const endsAt = row.trialEndsAt ?? trialPeriod(period).trialEndsAt;
  const replied = submissions.filter(({ reply }) => reply?.status === 'sent');
  const [first] = replied;
  const lastReplyAt = replied.at(-1)?.reply?.sentAt ?? null;
  const firstReplyAt = first?.reply?.sentAt ?? null;
  const stop = trialStop({
    now,
    endsAt,
    firstSwingAt: submissions[0]?.sentAt ?? null,
    waitsForUs: submissions.some(({ status }) => status === 'waiting' || status === 'preparing'),
    lastReplyAt,
    replyUnread: replied.some(({ reply }) => reply?.readAt === null),
    practisedSinceReply: practiceEntries.some(({ at }) => lastReplyAt !== null && at >= lastReplyAt),
  });
  return {
    student: { id: row.id, name: membership.name },
    day: trialStartedAt === null ? 0 : trialDay(trialStartedAt, now, membership.zone),
    days: academy.trialDays,
    endsAt: endsAt.toISOString(),
    firstSwingAt: iso(submissions[0]?.sentAt),
    firstReplyAt: iso(firstReplyAt),
    replyHours:
      first === undefined || firstReplyAt === null
        ? null
        : workingHoursBetween(first.sentAt, firstReplyAt, academy.working),
    replyReadAt: iso(first?.reply?.readAt),
    practiceEntries: practiceEntries.length,
    rungsPassed: practiceEntries.filter(({ verdict }) => verdict === 'passed').length,
    stop,
    nextAction: nextAction(stop),
  };
};
