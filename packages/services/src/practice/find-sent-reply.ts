import { ProblemError } from '@ballfirst/contracts/problems';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import { requireReader } from '../authorise.ts';
import type { Context } from '../context.ts';

const include = {
  author: true,
  submission: { include: { student: true, clips: true } },
} as const satisfies Prisma.ReplyInclude;
export type SentReply = Prisma.ReplyGetPayload<{ include: typeof include }> & { sentAt: Date };

/** A sent reply the actor may read; a draft is nobody's yet. @throws ProblemError not-found */
export const findSentReply = async (tx: Tx, ctx: Context, id: string): Promise<SentReply> => {
  const { academyId } = ctx;
  const row = await tx.reply.findUnique({ where: { academyId_id: { academyId, id } }, include });
  if (row === null || row.status !== 'sent' || row.sentAt === null) throw new ProblemError('not-found');
  requireReader(ctx, row.submission.studentId);
  return { ...row, sentAt: row.sentAt };
};
