import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { raiseConcern } from '../inbox/raise-concern.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { lockStudent } from '../students/lock-student.ts';
import { requireSending } from '../students/require-sending.ts';
import { threadOf } from './thread-of.ts';

/** A thread under a reply is short: more than this is a new swing, or a call. Common practice, no source. */
const linesAtMost = 20;
const unansweredAtMost = 3;

/**
 * Asks back about one's own reply. It waits in the inbox once a reply, however many lines; a coach's answer closes it.
 * @throws ProblemError not-found, not-allowed, thread-full
 */
export const askBack = async ({ ctx, input }: Call<'askBack'>): Promise<Reply<'askBack'>> => {
  const { studentId, membershipId } = requireStudent(ctx);
  return once(ctx, 'askBack', async (tx) => {
    const { academyId } = ctx;
    const student = await lockStudent(tx, ctx, studentId);
    requireSending(student);
    const reply = await findSentReply(tx, ctx, input.id);
    const before = await threadOf(tx, academyId, reply.id);
    const answered = before.findLastIndex(({ voice }) => voice === 'coach');
    if (before.length >= linesAtMost || before.length - answered > unansweredAtMost) {
      throw new ProblemError('thread-full');
    }
    const id = newId();
    await tx.question.create({
      data: {
        ...{ academyId, id, studentId, replyId: reply.id, byMembership: membershipId, voice: 'student' },
        ...{ words: input.words, at: ctx.resources.clock.now() },
      },
    });
    await raiseConcern(tx, ctx, {
      ...{ kind: 'question', subjectId: reply.id, programmeId: reply.programmeId, pain: 'none' },
      words: input.words,
      ...{ student, academy: student.academy },
    });
    await audit(tx, ctx, { action: 'ask-back', subject: `reply:${reply.id}` });
    return { thread: await threadOf(tx, academyId, reply.id) };
  });
};
