import { answerBack } from '@ballfirst/services/asking/answer-back';
import { askBack } from '@ballfirst/services/asking/ask-back';
import { askToJoin } from '@ballfirst/services/asking/ask-to-join';
import { nudgeFacts } from '@ballfirst/services/follow-ups/nudge-facts';
import { raiseStuck } from '@ballfirst/services/follow-ups/raise-stuck';
import { closeConcern } from '@ballfirst/services/inbox/close-concern';
import { lockStudent } from '@ballfirst/services/students/lock-student';
import type { Member } from './at-time.ts';
import type { Past } from './past.ts';
import type { Answer } from './story.ts';

type Given = {
  readonly coach: Member;
  readonly student: Member;
  readonly replyId: string;
  readonly answer: Answer;
};

/** What a student asked or wished after the reply, and practice that got stuck. */
export const seedAfterReply = async (past: Past, given: Given): Promise<void> => {
  const { coach, student, replyId, answer } = given;
  const { asks, stuckAt, joinAskedAt, painHeardAt } = answer;
  if (painHeardAt) await closePain(past, coach, student, painHeardAt);
  if (asks) {
    await askBack({ ctx: past.of(student, asks.at), input: { id: replyId, words: asks.words } });
    if (asks.answer) {
      const { at, words } = asks.answer;
      await answerBack({ ctx: past.of(coach, at), input: { id: replyId, words } });
    }
  }
  if (joinAskedAt) await askToJoin({ ctx: past.of(student, joinAskedAt), input: {} });
  if (stuckAt) await lookAtStep(past, student, stuckAt);
};

/** The coach has spoken with the student: the pain leaves the inbox, practice stays held. */
const closePain = async (past: Past, coach: Member, student: Member, at: Date): Promise<void> => {
  const { academyId, studentId } = student;
  await past.answered();
  const waiting = await past.tx.concern.findMany({
    where: { academyId, studentId: studentId ?? '', kind: 'pain', status: 'waiting' },
    select: { id: true },
  });
  for (const { id } of waiting) {
    await closeConcern({ ctx: past.of(coach, at), input: { id, outcome: 'spoke' } });
  }
};

/** The step that a student does not get past comes before the coaches, as the daily look brings it. */
const lookAtStep = async (past: Past, { studentId }: Member, at: Date): Promise<void> => {
  const ctx = past.system(at);
  const student = await lockStudent(past.tx, ctx, studentId ?? '');
  await raiseStuck(past.tx, ctx, student, await nudgeFacts(past.tx, student, at));
};
