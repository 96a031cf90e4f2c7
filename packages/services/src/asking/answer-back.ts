import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { lockStudent } from '../students/lock-student.ts';
import { threadOf } from './thread-of.ts';

/**
 * Answers what a student asked back: the question leaves the inbox, the student gets a letter.
 * @throws ProblemError not-found, wrong-state where nothing was asked
 */
export const answerBack = async ({ ctx, input }: Call<'answerBack'>): Promise<Reply<'answerBack'>> => {
  const { membershipId } = requireStaff(ctx);
  return once(ctx, 'answerBack', async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const reply = await findSentReply(tx, ctx, input.id);
    const { studentId } = reply.submission;
    await lockStudent(tx, ctx, studentId);
    if ((await tx.question.count({ where: { academyId, replyId: reply.id } })) === 0) {
      throw new ProblemError('wrong-state', 'The student has asked nothing about this reply.');
    }
    const id = newId();
    await tx.question.create({
      data: {
        ...{ academyId, id, studentId, replyId: reply.id, byMembership: membershipId, voice: 'coach' },
        ...{ words: input.words, at: now },
      },
    });
    const waiting = await tx.concern.findMany({
      where: { academyId, kind: 'question', subjectId: reply.id, status: 'waiting' },
    });
    for (const concern of waiting) {
      await tx.concern.update({
        where: { academyId_id: { academyId, id: concern.id } },
        data: {
          ...{ status: 'closed', closedAt: now, closedBy: membershipId, outcome: 'wrote' },
          ...{ claimedBy: null, claimedAt: null, claimExpiresAt: null, handedBy: null, handedWhy: null },
          version: { increment: 1 },
        },
      });
      await emit(tx, ctx, 'concern.closed', { concernId: concern.id });
    }
    await audit(tx, ctx, { action: 'answer-back', subject: `reply:${reply.id}` });
    await emit(tx, ctx, 'question.answered', { questionId: id });
    return { thread: await threadOf(tx, academyId, reply.id) };
  });
};
