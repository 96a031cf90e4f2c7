import { ProblemError } from '@ballfirst/contracts/problems';
import { requirePerson } from '../authorise.ts';
import { findClip } from '../clips/find-clip.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { gripPhotoOf, gripView } from './grip-photo-of.ts';

/** A photo of the grip: how far it is, or why it was refused. @throws ProblemError not-found */
export const readGripPhoto = async ({
  ctx,
  input,
}: Call<'readGripPhoto'>): Promise<Reply<'readGripPhoto'>> => {
  requirePerson(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findClip(tx, ctx, input.id);
    if (row.view !== gripView) throw new ProblemError('not-found');
    return gripPhotoOf(row);
  });
};
