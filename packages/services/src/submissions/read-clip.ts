import { ProblemError } from '@ballfirst/contracts/problems';
import { clipOf } from '../clips/clip-of.ts';
import { findClip } from '../clips/find-clip.ts';
import { gripView } from '../grip-photo/grip-photo-of.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/** One clip: how far it is, or why it was refused. @throws ProblemError not-found */
export const readClip = ({ ctx, input }: Call<'readClip'>): Promise<Reply<'readClip'>> =>
  inTransaction(ctx, async (tx) => {
    const row = await findClip(tx, ctx, input.id);
    if (row.view === gripView) throw new ProblemError('not-found');
    return clipOf(row);
  });
