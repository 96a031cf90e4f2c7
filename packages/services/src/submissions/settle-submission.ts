import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import { lockSubmission } from './lock-submission.ts';

/** What a submission waits for, by the states of its clips. */
export const statusByClips = (clips: readonly { readonly status: string }[]): string => {
  if (clips.length === 0) return 'needs-clip';
  if (clips.some(({ status }) => status === 'refused' || status === 'expired')) return 'needs-clip';
  return clips.every(({ status }) => status === 'ready') ? 'waiting' : 'preparing';
};

/**
 * Moves a submission on when one of its clips changed. Locked first: of two clips that finish at once the second one
 * sees the first.
 */
export const settleSubmission = async (tx: Tx, ctx: Context, id: string): Promise<void> => {
  const row = await lockSubmission(tx, ctx, id);
  if (row.status !== 'preparing' && row.status !== 'needs-clip') return;
  const status = statusByClips(row.clips);
  if (status === row.status) return;
  await tx.submission.update({
    where: { academyId_id: { academyId: ctx.academyId, id } },
    data: { status, version: { increment: 1 } },
  });
};
