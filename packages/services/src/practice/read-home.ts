import { ProblemError } from '@ballfirst/contracts/problems';
import { Standing } from '@ballfirst/contracts/words';
import { everyDrill } from '@ballfirst/library/cautions';
import { trialDay } from '@ballfirst/progress/trial-day';
import { requireStudent } from '../authorise.ts';
import { refusalWords } from '../clips/refusal-words.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { type StudentRow, type SubmissionRow, studentInclude, submissionInclude } from '../rows.ts';
import { hasConsent } from '../students/require-consent.ts';
import { mayWithStanding } from '../students/require-sending.ts';
import { submissionOf } from '../submissions/submission-of.ts';
import { verdictShown } from '../verdicts/verdict-shown.ts';
import { verdictsOf } from '../verdicts/verdicts-of.ts';
import { nextStep } from './next-step.ts';
import { programmeNow } from './programme-now.ts';
import { handOf, programmeInclude } from './programme-of.ts';
import { replySentence } from './reply-sentence.ts';

const shown = { swings: 5, replies: 10, weeks: 8 } as const;

const trialOf = (student: StudentRow, now: Date): Reply<'readHome'>['trial'] => {
  const { standing, trialStartedAt, trialEndsAt, academy, membership } = student;
  if (standing !== 'trial' || trialStartedAt === null || trialEndsAt === null) return null;
  return {
    day: Math.min(academy.trialDays, Math.max(1, trialDay(trialStartedAt, now, membership.zone))),
    days: academy.trialDays,
    endsAt: trialEndsAt.toISOString(),
    priceWords: academy.priceWords,
  };
};

const toPutRight = (swings: readonly SubmissionRow[]) => {
  const swing = swings.find(({ status }) => status === 'needs-clip' || status === 'film-again');
  if (swing === undefined) return null;
  const clip = swing.clips.find(({ status, refusal }) => status === 'expired' || refusal !== null);
  const words = refusalWords(clip?.status === 'expired' ? 'expired' : (clip?.refusal ?? 'expired'));
  return { submissionId: swing.id, words };
};

/** A pain that nobody has read yet; whoever answered the swing has read it. */
const tellsOfPain = ({ pain, painSeenAt, status }: SubmissionRow): boolean =>
  pain !== 'none' && painSeenAt === null && status !== 'answered';

/** Those of both drills: each is practised from here. */
const cautionsFor = ({ drill, second }: Reply<'readProgramme'>): string[] => [
  ...new Set([...drill.cautions, ...(second?.drill.cautions ?? [])]),
];

/** The student's home: the one thing to do next, and what lies behind it. */
export const readHome = async ({ ctx }: Pick<Call<'readHome'>, 'ctx'>): Promise<Reply<'readHome'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const own = { academyId, studentId };
    const student = await tx.student.findUnique({
      where: { academyId_id: { academyId, id: studentId } },
      include: studentInclude,
    });
    if (student === null) throw new ProblemError('not-found');
    const newest = [{ sentAt: 'desc' }, { id: 'desc' }] as const;
    const latest = await tx.submission.findMany({
      where: own,
      include: submissionInclude,
      orderBy: [...newest],
      take: shown.swings,
    });
    const replies = await tx.reply.findMany({
      where: { academyId, status: 'sent', submission: own },
      orderBy: [...newest],
      take: shown.replies,
    });
    const running = await tx.programme.findFirst({
      where: { ...own, status: { in: ['open', 'held'] } },
      include: programmeInclude,
    });
    const checkIn = await tx.checkIn.findFirst({
      where: { ...own, status: 'sent', asks: 'clip' },
      orderBy: { dueAt: 'desc' },
    });
    const weeks = await tx.rollUp.findMany({ where: own, orderBy: { week: 'desc' }, take: shown.weeks });
    const programme = running === null ? null : await programmeNow(tx, running);
    const verdict = (await verdictsOf(tx, academyId, [studentId])).get(studentId);
    return {
      next: nextStep({
        programme: programme === null ? null : { status: programme.status, drillName: programme.drill.name },
        painTold: latest.some(tellsOfPain),
        unreadReplyId: replies.find(({ readAt }) => readAt === null)?.id ?? null,
        toPutRight: toPutRight(latest),
        openCheckInId: checkIn?.id ?? null,
        waiting: latest.some(({ status }) => status === 'waiting' || status === 'preparing'),
        swings: latest.length,
        consentMissing: !hasConsent(student),
        maySend: mayWithStanding(student.standing),
      }),
      standing: Standing.parse(student.standing),
      trial: trialOf(student, now),
      programme,
      progress: verdict === undefined ? null : verdictShown(verdict, handOf(student)),
      latest: latest.map((row) => submissionOf(row, now)),
      replies: replies.map((row) => ({
        id: row.id,
        sentAt: (row.sentAt ?? row.updatedAt).toISOString(),
        readAt: row.readAt?.toISOString() ?? null,
        sentence: replySentence(row.cause, handOf(student)),
      })),
      weeks: weeks.map(({ week, entries, balls, clean, days }) => ({ week, entries, balls, clean, days })),
      cautions: programme === null ? [...everyDrill] : cautionsFor(programme),
    };
  });
};
