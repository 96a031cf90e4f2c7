import { Units } from '@ballfirst/contracts/http/line-tests';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { requireReader } from '../authorise.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { lineTestInclude, lineTestOf } from './line-test-of.ts';

const shown = 20;

/** The line tests of a student, newest first, in the student's units. @throws ProblemError not-found */
export const lineTestsOf = async (
  tx: Tx,
  ctx: Context,
  studentId: string,
): Promise<Reply<'listLineTests'>> => {
  requireReader(ctx, studentId);
  const { academyId } = ctx;
  const student = await tx.student.findUnique({ where: { academyId_id: { academyId, id: studentId } } });
  if (student === null) throw new ProblemError('not-found');
  const rows = await tx.lineTest.findMany({
    where: { academyId, studentId },
    include: lineTestInclude,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: shown,
  });
  return { units: Units.parse(student.units), items: rows.map(lineTestOf) };
};
