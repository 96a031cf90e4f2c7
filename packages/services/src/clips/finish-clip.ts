import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireReader, requireStudent } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { emit } from '../outbox.ts';
import { type Arrival, arrivalOf } from './arrival-of.ts';
import { lockClip } from './lock-clip.ts';

/**
 * Says that the last byte is on disk. Said twice, it counts once.
 * @throws ProblemError not-allowed, not-found, clip-not-yours when the upload has run out of time
 */
export const finishClip = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<Arrival> => {
  if (ctx.actor.kind === 'person') requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await lockClip(tx, ctx, input.clipId);
    requireReader(ctx, row.studentId);
    if (row.status === 'expired' || row.status === 'erased') throw new ProblemError('clip-not-yours');
    if (row.status !== 'uploading') return arrivalOf(row);
    const { academyId } = ctx;
    const finished = await tx.clip.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { status: 'uploaded', startedAt: ctx.resources.clock.now() },
    });
    await audit(tx, ctx, { action: 'finish-clip', subject: `clip:${row.id}` });
    await emit(tx, ctx, 'clip.uploaded', { clipId: row.id });
    return arrivalOf(finished);
  });
};
