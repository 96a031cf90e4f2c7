import { claimSubmission } from '@ballfirst/services/inbox/claim-submission';
import { markReplyRead } from '@ballfirst/services/practice/mark-reply-read';
import { chooseDiagnosis } from '@ballfirst/services/review/choose-diagnosis';
import { finishReply } from '@ballfirst/services/review/finish-reply';
import { saveMarks } from '@ballfirst/services/review/save-marks';
import { saveReply } from '@ballfirst/services/review/save-reply';
import { secondThoughtsMs, sendReply } from '@ballfirst/services/review/send-reply';
import type { Moment } from '../golfer/moments.ts';
import type { Member } from './at-time.ts';
import { drillFor } from './drill-for.ts';
import type { KeptFiles } from './kept-files.ts';
import { markingOf } from './marking-of.ts';
import type { Past } from './past.ts';
import { replyWords } from './reply-words.ts';
import { seedAfterReply } from './seed-after-reply.ts';
import { seedPractice } from './seed-practice.ts';
import type { Answer } from './story.ts';
import type { SecondDrill } from './student-line.ts';

/** The moment at which a cause is seen best. */
const seenAt: Readonly<Record<string, Moment>> = {
  'sway-away': 'top',
  'hang-back': 'lead-arm-parallel-down',
  'handle-back': 'shaft-parallel-back',
  'hips-back-at-address': 'top',
  'thrown-early': 'shaft-parallel-down',
};

type Given = {
  readonly coach: Member;
  readonly student: Member & { readonly hand: 'right' | 'left' };
  readonly swing: { readonly submissionId: string; readonly clipId: string };
  readonly answer: Answer;
  readonly kept: KeptFiles;
};

const planOf = ({ drillId, daysPerWeek, minutes: [first, second] }: SecondDrill) => ({
  daysPerWeek,
  minutesPerDay: first,
  weeklyMinutes: daysPerWeek * (first + second),
  second: { drillId, minutes: second },
});

/** Answers a swing as the story says: claim, marks, diagnosis, reply with its drill, reading, practice. */
export const seedAnswer = async (past: Past, given: Given): Promise<void> => {
  const { coach, student, swing, answer, kept } = given;
  const { at, cause } = answer;
  const { truth } = kept;
  const ctx = past.of(coach, at);
  const id = swing.submissionId;
  await claimSubmission({ ctx, input: { id } });
  const marking = markingOf(kept, `${student.name} ${answer.number}`);
  await saveMarks({ ctx, input: { id, clipId: swing.clipId, version: 0, ...marking, observations: [] } });
  await chooseDiagnosis({ ctx, input: { id, fault: answer.fault, cause, setUpTicks: [] } });
  const frame = (position: Moment, caption: string) => ({
    clipId: swing.clipId,
    position,
    frame: truth.positions[position],
    caption,
  });
  const drill = drillFor(cause, answer.place);
  await saveReply({
    ctx,
    input: {
      id,
      version: 0,
      words: replyWords(answer, student.hand),
      cause,
      setUpTicks: [],
      frames: [
        frame('address', 'Where you start'),
        frame(seenAt[cause] ?? 'impact', answer.number === 0 ? 'Where it happens' : 'Where it is now'),
      ],
      plan: {
        drillId: drill.id,
        place: answer.place,
        exaggeration: answer.number === 0 || answer.course === 'over-correcting' ? 'mild' : 'firm',
        weeklyMinutes: 60,
        firstCheckInDays: 7,
        ...(answer.second === undefined ? {} : planOf(answer.second)),
      },
    },
  });
  const sent = await sendReply({ ctx, input: { id } });
  const finalAt = new Date(at.getTime() + secondThoughtsMs);
  await finishReply({ ctx: past.system(finalAt), input: { replyId: sent.id } });
  await past.answered();
  if (answer.readAt) {
    await markReplyRead({ ctx: past.of(student, answer.readAt), input: { id: sent.id } });
  }
  await seedPractice(past, { student, replyId: sent.id, answer });
  await seedAfterReply(past, { coach, student, replyId: sent.id, answer });
};
