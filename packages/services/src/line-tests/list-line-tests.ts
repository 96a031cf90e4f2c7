import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lineTestsOf } from './line-tests-of.ts';

/** The line tests of a student. @throws ProblemError not-found */
export const listLineTests = ({ ctx, input }: Call<'listLineTests'>): Promise<Reply<'listLineTests'>> =>
  inTransaction(ctx, (tx) => lineTestsOf(tx, ctx, input.id));
