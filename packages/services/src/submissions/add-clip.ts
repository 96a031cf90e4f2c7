import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import type { ClipRow } from '../rows.ts';
import { requireConsent } from '../students/require-consent.ts';
import { findSubmission, lockSubmission } from './lock-submission.ts';
import { reopenAfterFilming } from './reopen-after-filming.ts';
import { settleSubmission } from './settle-submission.ts';
import { submissionOf } from './submission-of.ts';
import { takeClip } from './take-clips.ts';

const broken = new Set(['refused', 'expired']);

/** The clip that a new one stands in for: a refused one, or after "film again" the one seen from the same side. */
const replaced = (clips: readonly ClipRow[], view: string, filmAgain: boolean): ClipRow | undefined => {
  const candidates = filmAgain ? clips : clips.filter(({ status }) => broken.has(status));
  return candidates.find((clip) => clip.view === view) ?? candidates[0];
};

/**
 * Puts another clip in place of one that was refused, or of one the coach could not use.
 * @throws ProblemError not-found, clip-not-yours, wrong-state, consent-missing
 */
export const addClip = async ({ ctx, input }: Call<'addClip'>): Promise<Reply<'addClip'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    // Whose submission it is comes first: a foreign one is not there, whatever the clip.
    requireConsent((await findSubmission(tx, ctx, input.id)).student);
    const clip = await takeClip(tx, ctx, studentId, input.clipId);
    const row = await lockSubmission(tx, ctx, input.id);
    const filmAgain = row.status === 'film-again';
    if (row.status !== 'needs-clip' && !filmAgain) throw new ProblemError('wrong-state');
    const old = replaced(row.clips, clip.view, filmAgain);
    if (old !== undefined) {
      await tx.clip.update({
        where: { academyId_id: { academyId, id: old.id } },
        data: { submissionId: null },
      });
    }
    await tx.clip.update({
      where: { academyId_id: { academyId, id: clip.id } },
      data: { submissionId: row.id },
    });
    if (filmAgain) await reopenAfterFilming(tx, ctx, row);
    await settleSubmission(tx, ctx, row.id);
    await audit(tx, ctx, {
      action: 'add-clip',
      subject: `submission:${row.id}`,
      detail: { clipId: clip.id, insteadOf: old?.id ?? null },
    });
    return submissionOf(await findSubmission(tx, ctx, row.id), ctx.resources.clock.now());
  });
};
