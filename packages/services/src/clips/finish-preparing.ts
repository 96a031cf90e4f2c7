import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { emit } from '../outbox.ts';
import { settleSubmission } from '../submissions/settle-submission.ts';
import { lockClip } from './lock-clip.ts';

export type Outcome =
  | {
      readonly kind: 'ready';
      readonly widthPx: number;
      readonly heightPx: number;
      readonly frames: number;
      readonly fps: number;
      readonly durationMs: number;
      readonly sha256: string;
    }
  | { readonly kind: 'refused'; readonly refusal: string };

/**
 * Last of three steps: writes what preparing brought, unless somebody began again since.
 * @returns done: false for an old fence; nothing was written then
 */
export const finishPreparing = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string; fence: number; outcome: Outcome };
}): Promise<{ done: boolean }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await lockClip(tx, ctx, input.clipId);
    if (row.fence !== input.fence || row.status !== 'preparing') return { done: false };
    const { kind, ...found } = input.outcome;
    await tx.clip.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { status: kind, percent: kind === 'ready' ? 100 : row.percent, ...found },
    });
    await audit(tx, ctx, { action: 'prepare-clip', subject: `clip:${row.id}`, detail: { outcome: kind } });
    if (row.submissionId !== null) await settleSubmission(tx, ctx, row.submissionId);
    await emit(tx, ctx, 'clip.prepared', { clipId: row.id });
    return { done: true };
  });
};
