import { ProblemError } from '@ballfirst/contracts/problems';
import { Hand, Standing } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { workingHoursOf } from '../academy/working-hours-of.ts';
import { readsBody } from '../authorise-body.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { verdictShown } from '../verdicts/verdict-shown.ts';
import { verdictsOf } from '../verdicts/verdicts-of.ts';
import { meansOf } from './means-of.ts';
import { lineInclude, studentRowOf } from './student-row-of.ts';

/** One student with the history of standing and the weeks, newest first. @throws ProblemError not-found */
export const studentDetail = async (tx: Tx, ctx: Context, id: string): Promise<Reply<'readStudent'>> => {
  const { academyId } = ctx;
  const row = await tx.student.findUnique({
    where: { academyId_id: { academyId, id } },
    include: {
      ...lineInclude,
      academy: true,
      standings: { orderBy: [{ at: 'desc' }, { id: 'desc' }] },
    },
  });
  if (row === null) throw new ProblemError('not-found');
  const doers = row.standings.flatMap(({ byMembership }) => (byMembership === null ? [] : [byMembership]));
  const members = await tx.membership.findMany({ where: { academyId, id: { in: doers } } });
  const names = new Map(members.map((member) => [member.id, member.name]));
  const verdict = (await verdictsOf(tx, academyId, [id])).get(id);
  return {
    ...studentRowOf(row, workingHoursOf(row.academy), ctx.resources.clock.now(), verdict),
    progress: verdict === undefined ? null : verdictShown(verdict, Hand.parse(row.hand)),
    means: { ...meansOf(row), ...(readsBody(ctx) ? {} : { body: null, pains: [] }) },
    standings: row.standings.map((change) => ({
      from: Standing.nullable().parse(change.fromStanding),
      to: Standing.parse(change.toStanding),
      reason: change.reason,
      by: names.get(change.byMembership ?? '') ?? 'the service',
      at: change.at.toISOString(),
    })),
    weeks: row.rollUps.map(({ week, entries, balls, clean, days, swings, tallyBalls, tallyFat }) => ({
      ...{ week, entries, balls, clean, days, swings, tallyBalls, tallyFat },
    })),
  };
};
