import { ProblemError } from '@ballfirst/contracts/problems';
import { readingsOf } from '@ballfirst/diagnosis/evidence-of';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { Call, Reply } from '../operation-types.ts';
import { checkMarks, checkObservations, checkTrail, lastOfEach } from './check-marks.ts';
import { clipOfSubmission } from './clip-of-submission.ts';
import { faultOf } from './fault-of.ts';
import { latestDiagnosis } from './latest-diagnosis.ts';
import { settingOf } from './picture-of.ts';
import { evidenceFor, readingOf } from './reading-of.ts';
import { storeMeasurements } from './store-measurements.ts';
import { studentSetOf } from './student-set-of.ts';
import { timedPicture, trailOf } from './trail-of.ts';

/**
 * Saves all marks and observations of one clip, and the clubhead over its frames, and stores what they measure; answers with what they show.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, changed-meanwhile, mark-outside-frame
 */
export const saveMarks = async ({ ctx, input }: Call<'saveMarks'>): Promise<Reply<'saveMarks'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await requireClaim(tx, ctx, input.id);
    const clip = clipOfSubmission(row, input.clipId);
    if (clip.marksVersion !== input.version) throw new ProblemError('changed-meanwhile');
    const trail = lastOfEach(input.trail ?? trailOf(clip), ({ frame }) => String(frame)).sort(
      (a, b) => a.frame - b.frame,
    );
    const marks = lastOfEach(input.marks, ({ position, point }) => `${position} ${point}`);
    const picture = await timedPicture(ctx, clip, { marks, trail });
    const observations = lastOfEach(input.observations, ({ key }) => key);
    checkMarks(marks, picture);
    checkTrail(trail, picture);
    checkObservations(observations);
    const by = { academyId, clipId: clip.id, byMembership: membershipId, at: ctx.resources.clock.now() };
    await tx.mark.deleteMany({ where: { academyId, clipId: clip.id } });
    await tx.mark.createMany({ data: marks.map((mark) => ({ ...mark, ...by })) });
    await tx.observation.deleteMany({ where: { academyId, clipId: clip.id } });
    await tx.observation.createMany({ data: observations.map((one) => ({ ...one, ...by })) });
    const version = clip.marksVersion + 1;
    await tx.clip.update({
      where: { academyId_id: { academyId, id: clip.id } },
      data: { marksVersion: version, trail },
    });
    const setting = settingOf(clip, { hand: row.student.hand, club: row.club });
    const set = trail.length === 0 ? null : await studentSetOf(tx, ctx, { ...row, hand: row.student.hand });
    const marked = { marks, observations, trail, picture, setting, set, clipId: clip.id };
    await storeMeasurements(tx, ctx, { submissionId: row.id, clipId: clip.id }, readingsOf(marked).readings);
    await audit(tx, ctx, {
      action: 'save-marks',
      subject: `clip:${clip.id}`,
      detail: { version, marks: marks.length, observations: observations.length, trail: trail.length },
    });
    const chosen = await latestDiagnosis(tx, ctx, row.id);
    const fault = faultOf(chosen?.fault ?? null, { ...row, hand: row.student.hand });
    const reading = await readingOf(tx, ctx, row, chosen !== null);
    return {
      marking: { clipId: clip.id, version, marks, observations, trail },
      evidence: evidenceFor(fault, marked, reading),
    };
  });
};
