import { addDays, localDate } from '@ballfirst/calendar/local-date';
import type { WorkingHours } from '@ballfirst/calendar/working-hours';
import { workingHoursBetween } from '@ballfirst/calendar/working-hours-between';
import { AgeGroup, Hand, Standing } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Reply } from '../operation-types.ts';
import type { StudentVerdict } from '../verdicts/verdicts-of.ts';
import { hasConsent } from './require-consent.ts';
import { trialDayOf } from './trial-day-of.ts';

/** Weeks that a student's practice is summed over: a quarter of a year. */
export const weeksShown = 12;

/** What a student's line is made from. */
export const lineInclude = {
  membership: true,
  submissions: {
    orderBy: { sentAt: 'desc' },
    select: {
      sentAt: true,
      answeredAt: true,
      status: true,
      pain: true,
      painSeenAt: true,
      reply: { select: { status: true, sentAt: true, readAt: true } },
    },
  },
  programmes: { where: { status: { in: ['open', 'held'] } } },
  rollUps: { orderBy: { week: 'desc' }, take: weeksShown },
  practiceEntries: { orderBy: { at: 'desc' }, take: 60, select: { localDate: true } },
} as const satisfies Prisma.StudentInclude;
export type LineRow = Prisma.StudentGetPayload<{ include: typeof lineInclude }>;

type Line = Reply<'listStudents'>['items'][number];
const iso = (at: Date | null | undefined): string | null => at?.toISOString() ?? null;

const flagsOf = (row: LineRow): Line['flags'] => {
  const { submissions, programmes } = row;
  const flags: Line['flags'] = [];
  if (submissions.some(({ status }) => status === 'waiting')) flags.push('waiting');
  const unseen = submissions.some(({ pain, painSeenAt }) => pain !== 'none' && painSeenAt === null);
  if (unseen || programmes.some(({ status }) => status === 'held')) flags.push('pain');
  if (!hasConsent(row)) flags.push('consent');
  if (submissions.some(({ reply }) => reply?.status === 'sent' && reply.readAt === null))
    flags.push('unread');
  return flags;
};

/** Days a week that are planned for whoever has not said: common practice, no source. */
const plannedDays = 3;

const daysThisWeek = (row: LineRow, now: Date): number => {
  const from = addDays(localDate(now, row.membership.zone), -6);
  const days = row.practiceEntries.filter((entry) => entry.localDate >= from);
  return new Set(days.map((entry) => entry.localDate)).size;
};

/** A student as one line of the manager's table. */
export const studentRowOf = (
  row: LineRow,
  working: WorkingHours,
  now: Date,
  verdict: StudentVerdict | undefined,
): Line => {
  const { submissions, rollUps, programmes, membership } = row;
  const answered = submissions.find(({ answeredAt }) => answeredAt !== null);
  const sum = (of: 'entries' | 'balls' | 'clean' | 'days'): number =>
    rollUps.reduce((total, week) => total + week[of], 0);
  return {
    id: row.id,
    name: membership.name,
    email: membership.email,
    standing: Standing.parse(row.standing),
    hand: Hand.parse(row.hand),
    ageGroup: AgeGroup.parse(row.ageGroup),
    trialDay: trialDayOf({ ...row, zone: membership.zone }, now),
    trialEndsAt: iso(row.trialEndsAt),
    joinedAt: row.createdAt.toISOString(),
    firstSwingAt: iso(submissions.at(-1)?.sentAt),
    lastSwingAt: iso(submissions[0]?.sentAt),
    lastReplyAt: iso(submissions.find(({ reply }) => reply?.status === 'sent')?.reply?.sentAt),
    replyHours:
      answered?.answeredAt == null
        ? null
        : workingHoursBetween(answered.sentAt, answered.answeredAt, working),
    practice: {
      ...{ entries: sum('entries'), balls: sum('balls'), clean: sum('clean'), days: sum('days') },
      daysThisWeek: daysThisWeek(row, now),
      daysPlanned: row.daysPerWeek ?? plannedDays,
    },
    verdict: verdict?.verdict ?? null,
    cause: programmes[0]?.cause ?? null,
    rung: programmes[0]?.rung ?? null,
    flags: flagsOf(row),
  };
};
