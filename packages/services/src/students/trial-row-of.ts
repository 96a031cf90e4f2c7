import { localDate } from '@ballfirst/calendar/local-date';
import type { WorkingHours } from '@ballfirst/calendar/working-hours';
import { workingHoursBetween } from '@ballfirst/calendar/working-hours-between';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Reply } from '../operation-types.ts';
import { hasConsent } from './require-consent.ts';
import { trialDayOf } from './trial-day-of.ts';
import { trialPeriod } from './trial-period.ts';
import { nextAction, type TrialFacts, trialStop } from './trial-stop.ts';

/** What a trial's line is made from. */
export const trialInclude = {
  membership: true,
  submissions: {
    orderBy: { sentAt: 'asc' },
    select: { sentAt: true, status: true, reply: { select: { status: true, sentAt: true, readAt: true } } },
  },
  practiceEntries: { orderBy: { at: 'asc' }, select: { at: true, localDate: true, verdict: true } },
  programmes: { where: { status: 'held' }, select: { id: true } },
} as const satisfies Prisma.StudentInclude;
export type TrialStudent = Prisma.StudentGetPayload<{ include: typeof trialInclude }>;

const iso = (at: Date | null | undefined): string | null => at?.toISOString() ?? null;
const joinAction = 'Get in touch: this student would like to join.';
const waits = new Set(['waiting', 'preparing']);
const toFilm = new Set(['needs-clip', 'film-again']);

/** What was done from the trial's first day on: an earlier trial of the same student does not count. */
const ofThisTrial = (row: TrialStudent) => {
  const { trialStartedAt, membership } = row;
  if (trialStartedAt === null) return { submissions: [], entries: [] };
  const firstDay = localDate(trialStartedAt, membership.zone);
  return {
    submissions: row.submissions.filter(({ sentAt }) => localDate(sentAt, membership.zone) >= firstDay),
    entries: row.practiceEntries.filter((entry) => entry.localDate >= firstDay),
  };
};

/** One open trial. One that begins with the first swing, before it: day 0, and the end it would have from today. */
export const trialRowOf = (
  row: TrialStudent,
  academy: { readonly trialDays: number; readonly working: WorkingHours },
  now: Date,
): Reply<'readTrials'>['items'][number] => {
  const { membership, trialStartedAt } = row;
  const { submissions, entries } = ofThisTrial(row);
  const period = { startedAt: trialStartedAt ?? now, days: academy.trialDays, zone: membership.zone };
  const endsAt = row.trialEndsAt ?? trialPeriod(period).trialEndsAt;
  const replied = submissions.filter(({ reply }) => reply?.status === 'sent');
  const [first] = replied;
  const lastReplyAt = replied.at(-1)?.reply?.sentAt ?? null;
  const firstReplyAt = first?.reply?.sentAt ?? null;
  const facts: TrialFacts = {
    now,
    endsAt,
    firstSwingAt: submissions[0]?.sentAt ?? null,
    filmAgain: toFilm.has(submissions.at(-1)?.status ?? ''),
    waitsForUs: submissions.some(({ status }) => waits.has(status)),
    lastReplyAt,
    replyUnread: replied.some(({ reply }) => reply?.readAt === null),
    practisedSinceReply: entries.some(({ at }) => lastReplyAt !== null && at >= lastReplyAt),
    held: row.programmes.length > 0,
    consentMissing: !hasConsent(row),
  };
  const stop = trialStop(facts);
  return {
    student: { id: row.id, name: membership.name },
    day: trialDayOf({ ...row, zone: membership.zone }, now) ?? 0,
    days: academy.trialDays,
    endsAt: endsAt.toISOString(),
    firstSwingAt: iso(facts.firstSwingAt),
    firstReplyAt: iso(firstReplyAt),
    replyHours:
      first === undefined || firstReplyAt === null
        ? null
        : workingHoursBetween(first.sentAt, firstReplyAt, academy.working),
    replyReadAt: iso(first?.reply?.readAt),
    practiceEntries: entries.length,
    rungsPassed: entries.filter(({ verdict }) => verdict === 'passed').length,
    stop,
    nextAction: row.joinAskedAt === null ? nextAction(stop, facts) : joinAction,
    joinAskedAt: iso(row.joinAskedAt),
  };
};
