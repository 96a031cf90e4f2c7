import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { programmeNow } from './programme-now.ts';
import { findProgramme } from './programme-of.ts';

/** A programme with its entries. @throws ProblemError not-found */
export const readProgramme = ({ ctx, input }: Call<'readProgramme'>): Promise<Reply<'readProgramme'>> =>
  inTransaction(ctx, async (tx) => programmeNow(tx, await findProgramme(tx, ctx, input.id)));
