import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { diagnosisOf } from './diagnosis-of.ts';
import { faultOf } from './fault-of.ts';
import { latestDiagnosis } from './latest-diagnosis.ts';
import { markedClips } from './marked-clips.ts';
import { evidenceFor, readingOf } from './reading-of.ts';
import { studentSetOf } from './student-set-of.ts';

/** The diagnosis chosen last and the evidence as it computes now. @throws ProblemError not-found */
export const readDiagnosis = async ({
  ctx,
  input,
}: Call<'readDiagnosis'>): Promise<Reply<'readDiagnosis'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await findSubmission(tx, ctx, input.id);
    const chosen = await latestDiagnosis(tx, ctx, row.id);
    const by =
      chosen === null
        ? null
        : await tx.membership.findUniqueOrThrow({
            where: { academyId_id: { academyId, id: chosen.byMembership } },
          });
    const fault = faultOf(chosen?.fault ?? null, { ...row, hand: row.student.hand });
    const clips = await markedClips(tx, ctx, row);
    const traced = clips.some(({ trail = [] }) => trail.length > 0);
    const set = traced ? await studentSetOf(tx, ctx, { ...row, hand: row.student.hand }) : null;
    const reading = await readingOf(tx, ctx, row, chosen !== null);
    return {
      chosen: chosen === null || by === null ? null : diagnosisOf({ ...chosen, by: by.name }),
      evidence: clips.map((clip) => ({
        clipId: clip.clipId,
        ...evidenceFor(fault, { ...clip, set }, reading),
      })),
    };
  });
};
