import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import { Prisma } from '@ballfirst/db/generated/client';
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
      readonly suggestion: Suggestion | null;
    }
  | {
      /** A photo has no frames, no time and nothing to look for. */
      readonly kind: 'photo';
      readonly widthPx: number;
      readonly heightPx: number;
      readonly sha256: string;
    }
  | { readonly kind: 'refused'; readonly refusal: string };

/** Looked at: there is nothing to say. */
const nothingSuggested: Suggestion = { impact: null, window: null, strip: [] };

const foundBy = (outcome: Outcome): Prisma.ClipUpdateInput => {
  if (outcome.kind === 'refused') return { status: outcome.kind, refusal: outcome.refusal };
  if (outcome.kind === 'photo') {
    const { kind: _, ...picture } = outcome;
    return { status: 'ready', percent: 100, ...picture, suggestion: nothingSuggested };
  }
  const { kind, suggestion, ...picture } = outcome;
  return { status: kind, percent: 100, ...picture, suggestion: suggestion ?? Prisma.DbNull };
};

/**
 * Last of three steps: writes what preparing brought, unless somebody began again since.
 * @returns done: false for an old fence or a clip erased meanwhile; nothing was written then
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
    await tx.clip.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: foundBy(input.outcome),
    });
    const { kind } = input.outcome;
    await audit(tx, ctx, { action: 'prepare-clip', subject: `clip:${row.id}`, detail: { outcome: kind } });
    if (row.submissionId !== null) await settleSubmission(tx, ctx, row.submissionId);
    await emit(tx, ctx, 'clip.prepared', { clipId: row.id });
    return { done: true };
  });
};
