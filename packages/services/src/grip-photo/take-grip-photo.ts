import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { lockClip } from '../clips/lock-clip.ts';
import type { Context } from '../context.ts';
import { gripView } from './grip-photo-of.ts';

/** One refused meanwhile is taken too: the swing arrives, and the reason stands beside it. */
const sendable = new Set(['uploading', 'uploaded', 'preparing', 'ready', 'refused']);

/** Puts one of the student's own photos beside a swing. @throws ProblemError clip-not-yours */
export const takeGripPhoto = async (
  tx: Tx,
  ctx: Context,
  { studentId, photoId, submissionId }: { studentId: string; photoId: string; submissionId: string },
): Promise<void> => {
  const { academyId } = ctx;
  const row = await lockClip(tx, ctx, photoId).catch((error: unknown) => {
    if (error instanceof ProblemError && error.code === 'not-found') throw new ProblemError('clip-not-yours');
    throw error;
  });
  const own = row.studentId === studentId && row.view === gripView;
  if (!own || row.photoOf !== null || !sendable.has(row.status)) throw new ProblemError('clip-not-yours');
  await tx.clip.update({
    where: { academyId_id: { academyId, id: row.id } },
    data: { photoOf: submissionId },
  });
};
