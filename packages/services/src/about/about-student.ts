import { Units } from '@ballfirst/contracts/http/line-tests';
import { ProblemError } from '@ballfirst/contracts/problems';
import { AgeGroup, Hand, ProgrammeStatus } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { readsBody } from '../authorise-body.ts';
import type { Context } from '../context.ts';
import { lineTestInclude, lineTestOf } from '../line-tests/line-test-of.ts';
import type { Reply } from '../operation-types.ts';
import { meansOf } from '../students/means-of.ts';
import { verdictShown } from '../verdicts/verdict-shown.ts';
import { verdictsOf } from '../verdicts/verdicts-of.ts';
import { coachNoteOf } from './coach-note-of.ts';
import { drillName } from './drill-name.ts';
import { timelineOf } from './timeline-of.ts';

type About = Reply<'readAbout'>;

const practised = (entries: readonly { readonly balls: number; readonly clean: number }[]) => ({
  entries: entries.length,
  balls: entries.reduce((sum, { balls }) => sum + balls, 0),
  clean: entries.reduce((sum, { clean }) => sum + clean, 0),
});

const lastOf = async (tx: Tx, academyId: string, studentId: string): Promise<About['last']> => {
  const row = await tx.programme.findFirst({
    where: { academyId, studentId },
    include: { entries: { select: { balls: true, clean: true, second: true } } },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  });
  if (row === null) return null;
  return {
    cause: row.cause,
    drill: drillName(row.drillId),
    rung: row.rung,
    status: ProgrammeStatus.parse(row.status),
    since: row.createdAt.toISOString(),
    ...practised(row.entries.filter(({ second }) => !second)),
    second:
      row.secondDrillId === null
        ? null
        : {
            ...{ drill: drillName(row.secondDrillId), rung: row.secondRung },
            ...practised(row.entries.filter(({ second }) => second)),
          },
  };
};

/** What a coach wants to know of a student beside a swing. @throws ProblemError not-found */
export const aboutStudent = async (tx: Tx, ctx: Context, id: string): Promise<About> => {
  const { academyId } = ctx;
  const row = await tx.student.findUnique({
    where: { academyId_id: { academyId, id } },
    include: { membership: { select: { name: true } } },
  });
  if (row === null) throw new ProblemError('not-found');
  const hand = Hand.parse(row.hand);
  const verdict = (await verdictsOf(tx, academyId, [id])).get(id);
  const test = await tx.lineTest.findFirst({
    where: { academyId, studentId: id },
    include: lineTestInclude,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
  return {
    student: {
      ...{ id, name: row.membership.name, hand },
      ...{ ageGroup: AgeGroup.parse(row.ageGroup), units: Units.parse(row.units) },
    },
    means: { ...meansOf(row), ...(readsBody(ctx) ? {} : { body: null }) },
    note: await coachNoteOf(tx, academyId, id),
    last: await lastOf(tx, academyId, id),
    progress: verdict === undefined ? null : verdictShown(verdict, hand),
    lineTest: test === null ? null : lineTestOf(test),
    ...(await timelineOf(tx, academyId, id)),
  };
};
