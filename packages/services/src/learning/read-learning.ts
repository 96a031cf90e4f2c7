import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { learnedNow } from './learned-now.ts';
import { learningOf } from './learning-of.ts';

/** What the academy has learned, with its counts. */
export const readLearning = async ({ ctx }: Call<'readLearning'>): Promise<Reply<'readLearning'>> => {
  requireStaff(ctx);
  return learningOf(await inTransaction(ctx, (tx) => learnedNow(tx, ctx)));
};
