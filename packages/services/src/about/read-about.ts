import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { aboutStudent } from './about-student.ts';

/** What a coach wants to know of a student while looking at a swing. @throws ProblemError not-found */
export const readAbout = async ({ ctx, input }: Call<'readAbout'>): Promise<Reply<'readAbout'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, (tx) => aboutStudent(tx, ctx, input.id));
};
