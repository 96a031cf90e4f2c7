import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { ClipRow } from '../rows.ts';
import { stillKey, stillsAtMost } from './still-key.ts';

/** Where pictures made of a clip may lie: those of the reply to its swing. */
export const stillKeysOf = async (tx: Tx, ctx: Context, clip: ClipRow): Promise<readonly string[]> => {
  const { academyId } = ctx;
  if (clip.submissionId === null) return [];
  const reply = await tx.reply.findUnique({
    where: { academyId_submissionId: { academyId, submissionId: clip.submissionId } },
    select: { id: true },
  });
  if (reply === null) return [];
  return Array.from({ length: stillsAtMost }, (_, index) =>
    stillKey({ academyId, replyId: reply.id }, index),
  );
};
