import { ProblemError } from '@ballfirst/contracts/problems';
import { requireStudent } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findClip } from './find-clip.ts';
import { originalKey } from './keys.ts';

export type Upload = {
  readonly clipId: string;
  readonly key: string;
  readonly lengthBytes: number;
  readonly status: string;
  readonly expiresAt: Date;
};

/** An upload of the acting student, for the door to go on with. @throws ProblemError not-found when gone or expired */
export const readUpload = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<Upload> => {
  requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findClip(tx, ctx, input.clipId);
    const late = row.status === 'uploading' && row.expiresAt <= ctx.resources.clock.now();
    if (row.status === 'expired' || row.status === 'erased' || late) throw new ProblemError('not-found');
    return {
      clipId: row.id,
      key: originalKey({ academyId: ctx.academyId, clipId: row.id }),
      lengthBytes: Number(row.lengthBytes),
      status: row.status,
      expiresAt: row.expiresAt,
    };
  });
};
