import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import { type StudentRow, studentInclude } from '../rows.ts';

/** A student held against other writers to the end of the transaction. @throws ProblemError not-found */
export const lockStudent = async (tx: Tx, ctx: Context, id: string): Promise<StudentRow> => {
  const { academyId } = ctx;
  await tx.$queryRaw`SELECT id FROM public.student
    WHERE academy_id = ${academyId}::uuid AND id = ${id}::uuid FOR UPDATE`;
  const row = await tx.student.findUnique({
    where: { academyId_id: { academyId, id } },
    include: studentInclude,
  });
  if (row === null) throw new ProblemError('not-found');
  return row;
};
