import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { studentDetail } from './student-detail.ts';

/** One student with the history of standing and the weeks. @throws ProblemError not-found */
export const readStudent = async ({ ctx, input }: Call<'readStudent'>): Promise<Reply<'readStudent'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, (tx) => studentDetail(tx, ctx, input.id));
};
