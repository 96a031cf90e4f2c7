import { ProblemError } from '@ballfirst/contracts/problems';
import { requirePerson, requireReader } from '../authorise.ts';
import { talkKey } from '../clips/keys.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { type SoundKind, soundKinds } from './sound-kind.ts';

/**
 * Where the sound of a talk-through lies, when the actor may hear it: coaches and managers of the academy, and the student
 * it was spoken for once the reply has gone out with it.
 * @throws ProblemError not-found
 */
export const readTalkSound = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { id: string };
}): Promise<{ key: string; type: SoundKind }> => {
  const actor = requirePerson(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    const row = await tx.talkThrough.findUnique({
      where: { academyId_id: { academyId, id: input.id } },
      include: { submission: { include: { reply: true } }, clip: true },
    });
    if (row === null || row.clip.status !== 'ready') throw new ProblemError('not-found');
    requireReader(ctx, row.submission.studentId);
    const { reply } = row.submission;
    const heard = reply?.status === 'sent' && reply.withTalk;
    if (actor.role === 'student' && !heard) throw new ProblemError('not-found');
    const type = soundKinds.find((kind) => kind === row.kind);
    if (type === undefined) throw new ProblemError('not-found');
    return { key: talkKey({ academyId, clipId: row.clipId }, row.id), type };
  });
};
