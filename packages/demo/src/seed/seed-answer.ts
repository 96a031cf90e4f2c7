import { withAcademy } from '@ballfirst/db/with-academy';
import type { Resources } from '@ballfirst/services/context';
import { claimSubmission } from '@ballfirst/services/inbox/claim-submission';
import { logPractice } from '@ballfirst/services/practice/log-practice';
import { markReplyRead } from '@ballfirst/services/practice/mark-reply-read';
import { chooseDiagnosis } from '@ballfirst/services/review/choose-diagnosis';
import { saveMarks } from '@ballfirst/services/review/save-marks';
import { saveReply } from '@ballfirst/services/review/save-reply';
import { sendReply } from '@ballfirst/services/review/send-reply';
import type { Truth } from '../golfer/truth.ts';
import { contextOf, type Member } from './at-time.ts';
import { marksOf } from './marks-of.ts';
import type { SwingLine } from './swings.ts';

type Answered = NonNullable<SwingLine['answered']>;
const later = (at: Date, hours: number): Date => new Date(at.getTime() + hours * 3_600_000);

/** Answers a swing as the story says: claim, diagnosis, reply with its drill, reading, practice. */
export const seedAnswer = async (
  resources: Resources,
  given: {
    coach: Member;
    student: Member;
    swing: { submissionId: string; clipId: string; sentAt: Date };
    answer: Answered;
    truth: Truth;
    place: 'mat' | 'grass';
  },
): Promise<void> => {
  const { coach, student, swing, answer, truth } = given;
  const at = later(swing.sentAt, answer.afterHours);
  const ctx = contextOf(resources, coach, at);
  const id = swing.submissionId;
  await claimSubmission({ ctx, input: { id } });
  const marks = marksOf(truth);
  await saveMarks({ ctx, input: { id, clipId: swing.clipId, version: 0, marks, observations: [] } });
  await chooseDiagnosis({ ctx, input: { id, fault: 'fat', cause: answer.cause, setUpTicks: [] } });
  const frame = (position: 'address' | 'top' | 'lead-arm-parallel-down', caption: string) => ({
    clipId: swing.clipId,
    position,
    frame: truth.positions[position] ?? 0,
    caption,
  });
  const draft = await saveReply({
    ctx,
    input: {
      id,
      version: 0,
      words: answer.words,
      cause: answer.cause,
      setUpTicks: [],
      frames: [frame('address', 'Where you start'), frame('lead-arm-parallel-down', 'Where it happens')],
      plan: {
        drillId: answer.drill,
        place: given.place,
        exaggeration: 'mild',
        weeklyMinutes: 60,
        firstCheckInDays: 7,
      },
    },
  });
  const sent = await sendReply({ ctx, input: { id } });
  const mine = (when: Date) => contextOf(resources, student, when);
  if (answer.read) await markReplyRead({ ctx: mine(later(at, 2)), input: { id: sent.id } });
  const programmeId = await withAcademy(resources.db, student.academyId, async (tx) => {
    const reply = await tx.reply.findUniqueOrThrow({
      where: { academyId_id: { academyId: student.academyId, id: draft.id } },
    });
    return reply.programmeId;
  });
  if (programmeId === null) return;
  // Each entry is logged on the rung the gate has led to by then; a ladder that is climbed takes no more.
  let rung = answer.practice[0]?.[1] ?? 'rehearsal';
  for (const [days, , balls, clean] of answer.practice) {
    const { programme } = await logPractice({
      ctx: mine(later(at, days * 24 + 1)),
      input: { id: programmeId, rung, balls, clean, filmed: false, pain: 'none' },
    });
    if (programme.status !== 'open') return;
    rung = programme.rung;
  }
};
