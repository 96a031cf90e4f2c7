import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { takeGripPhoto } from '../grip-photo/take-grip-photo.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { holdPractice } from '../practice/hold-practice.ts';
import { lockStudent } from '../students/lock-student.ts';
import { requireConsent } from '../students/require-consent.ts';
import { requireSending } from '../students/require-sending.ts';
import { startTrialAtFirstSwing } from '../students/start-trial-at-first-swing.ts';
import { answerCheckIn } from './answer-check-in.ts';
import { checkTally } from './check-tally.ts';
import { findSubmission } from './lock-submission.ts';
import { placeSwing } from './place-swing.ts';
import { statusByClips } from './settle-submission.ts';
import { submissionOf } from './submission-of.ts';
import { takeClips } from './take-clips.ts';

/**
 * Sends a swing. Its place in the inbox is computed and stored here; pain that is new or worse holds practice at once.
 * @throws ProblemError tally-over-total, tally-empty, clip-missing, clip-not-yours, consent-missing, not-allowed, not-found
 */
export const sendSubmission = async ({
  ctx,
  input,
}: Call<'sendSubmission'>): Promise<Reply<'sendSubmission'>> => {
  const { studentId } = requireStudent(ctx);
  checkTally(input.tally);
  return once(ctx, 'sendSubmission', async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const student = await lockStudent(tx, ctx, studentId);
    requireSending(student);
    requireConsent(student);
    const clips = await takeClips(tx, ctx, studentId, input.clipIds);
    if (input.checkInId !== null) await answerCheckIn(tx, ctx, studentId, input.checkInId);
    const before = await tx.submission.count({ where: { academyId, studentId } });
    const trialEnd = await startTrialAtFirstSwing(tx, ctx, student);
    const id = (ctx.mintId ?? newId)();
    const { clipIds: _, swingLength, gripPhotoId: photoId, ...told } = input;
    await tx.submission.create({
      data: {
        academyId,
        id,
        studentId,
        ...told,
        painNote: input.pain === 'none' ? '' : input.painNote,
        status: statusByClips(clips),
        sentAt: now,
        version: 1,
        ...(await placeSwing(tx, ctx, studentId, {
          submissionId: id,
          tally: input.tally,
          pain: input.pain,
          painAcknowledged: false,
          from: now,
          academy: student.academy,
          trialEnd,
          firstSwing: before === 0,
          checkIn: input.checkInId !== null,
        })),
      },
    });
    await tx.clip.updateMany({
      where: { academyId, id: { in: clips.map((clip) => clip.id) } },
      data: { submissionId: id, ...(swingLength && { swingLength }) },
    });
    if (photoId) await takeGripPhoto(tx, ctx, { studentId, photoId, submissionId: id });
    if (input.pain !== 'none') await holdPractice(tx, ctx, studentId, 'pain-with-swing');
    await audit(tx, ctx, { action: 'send-submission', subject: `submission:${id}` });
    await emit(tx, ctx, 'submission.sent', { submissionId: id });
    return submissionOf(await findSubmission(tx, ctx, id), now);
  });
};
