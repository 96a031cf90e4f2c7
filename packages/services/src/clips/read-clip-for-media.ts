import { ProblemError } from '@ballfirst/contracts/problems';
import { requirePerson } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findClip } from './find-clip.ts';
import { type MediaFile, mediaFiles } from './keys.ts';
import { requireOpen } from './require-open.ts';

/**
 * Where a media file lies, when the actor may see it: the student it belongs to, coaches and managers of the academy.
 * @throws ProblemError not-found, also while the clip is not ready; consent-missing once consent was withdrawn
 */
export const readClipForMedia = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string; file: MediaFile };
}): Promise<{ key: string; type: string }> => {
  requirePerson(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findClip(tx, ctx, input.clipId);
    requireOpen(row);
    if (row.status !== 'ready') throw new ProblemError('not-found');
    const file = mediaFiles[input.file];
    return { key: file.key({ academyId: ctx.academyId, clipId: row.id }), type: file.type };
  });
};
