import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findClip } from './find-clip.ts';
import { finishClip } from './finish-clip.ts';
import { originalKey } from './keys.ts';

/**
 * Finds a video whose last byte arrived though nobody noted it: the door ended just then and its sender did not come back.
 * @returns arrived: it was whole and is on its way to be prepared
 */
export const noteArrived = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<{ arrived: boolean }> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const { clipId } = input;
  const row = await inTransaction(ctx, (tx) => findClip(tx, ctx, clipId));
  if (row.status !== 'uploading') return { arrived: false };
  const size = await ctx.resources.blobs.size(originalKey({ academyId, clipId }));
  if (size !== Number(row.lengthBytes)) return { arrived: false };
  await finishClip({ ctx, input });
  return { arrived: true };
};
