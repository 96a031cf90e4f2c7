import { Outcome, Pain, Standing, SubmissionStatus, Verdict } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { lineTestInclude, lineTestOf } from '../line-tests/line-test-of.ts';
import type { Reply } from '../operation-types.ts';
import { drillName } from './drill-name.ts';

type Item = Reply<'readAbout'>['timeline'][number];
type Swing = Extract<Item, { kind: 'swing' }>;

/** What a coach reads in one look; the whole history stands on the student's own page. */
const atMost = 80;

/** What happened with a student, the newest first: one more of each kind is read than is shown. */
export const timelineOf = async (
  tx: Tx,
  academyId: string,
  studentId: string,
): Promise<{ timeline: Item[]; older: boolean }> => {
  const own = { academyId, studentId };
  const take = atMost + 1;
  const newest = [{ at: 'desc' }, { id: 'desc' }] as const;
  const standings = await tx.standingChange.findMany({ where: own, orderBy: [...newest], take });
  const swings = await tx.submission.findMany({
    where: own,
    include: { reply: { include: { author: { select: { name: true } } } } },
    orderBy: [{ sentAt: 'desc' }, { id: 'desc' }],
    take,
  });
  const programmes = await tx.programme.findMany({
    where: own,
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
    take,
  });
  const entries = await tx.practiceEntry.findMany({
    ...{ where: own, orderBy: [...newest], take },
    include: { programme: { select: { drillId: true, secondDrillId: true } } },
  });
  const questions = await tx.question.findMany({ where: own, orderBy: [...newest], take });
  const lessons = await tx.lesson.findMany({
    ...{ where: own, include: lineTestInclude, orderBy: [...newest], take },
  });
  const tests = await tx.lineTest.findMany({
    ...{ where: own, include: lineTestInclude, orderBy: [...newest], take },
  });

  const items: Item[] = [
    ...standings.map(({ id, at, toStanding, reason }) => ({
      ...{ kind: 'standing' as const, id, at: at.toISOString(), to: Standing.parse(toStanding), reason },
    })),
    ...swings.map((row) => ({
      ...{ kind: 'swing' as const, id: row.id, at: row.sentAt.toISOString() },
      club: row.club as Swing['club'],
      fault: Outcome.nullable().catch(null).parse(row.leadFault),
      status: SubmissionStatus.parse(row.status),
      pain: Pain.parse(row.pain),
      words: row.note,
    })),
    ...swings.flatMap(({ id: submissionId, reply }) =>
      reply?.status !== 'sent' || reply.sentAt === null
        ? []
        : [
            {
              ...{ kind: 'reply' as const, id: reply.id, at: reply.sentAt.toISOString(), submissionId },
              ...{ by: reply.author.name, cause: reply.cause, read: reply.readAt !== null },
              saidReadAt: reply.saidReadAt?.toISOString() ?? null,
            },
          ],
    ),
    ...programmes.map(({ id, createdAt, cause, drillId }) => ({
      ...{ kind: 'programme' as const, id, at: createdAt.toISOString(), cause, drill: drillName(drillId) },
    })),
    ...entries.map(({ id, at, rung, balls, clean, verdict, pain, second, programme }) => ({
      ...{ kind: 'entry' as const, id, at: at.toISOString(), rung, balls, clean },
      drill: drillName((second ? programme.secondDrillId : null) ?? programme.drillId),
      ...{ verdict: Verdict.parse(verdict), pain: Pain.parse(pain) },
    })),
    ...questions.map(({ id, at, replyId, voice, words }) => ({
      ...{ kind: 'question' as const, id, at: at.toISOString(), replyId, words },
      voice: voice === 'coach' ? ('coach' as const) : ('student' as const),
    })),
    ...lessons.map(({ id, at, localDate, words, by }) => ({
      ...{ kind: 'lesson' as const, id, at: at.toISOString(), localDate, words, by: by.name },
    })),
    ...tests.map((row) => ({ kind: 'line-test' as const, ...lineTestOf(row) })),
  ];
  items.sort((a, b) => b.at.localeCompare(a.at) || b.id.localeCompare(a.id));
  return { timeline: items.slice(0, atMost), older: items.length > atMost };
};
