import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { findClip } from '../clips/find-clip.ts';
import { lockClip } from '../clips/lock-clip.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { requireConsent } from '../students/require-consent.ts';
import { findSubmission, lockSubmission } from '../submissions/lock-submission.ts';
import { gripPhotoOf } from './grip-photo-of.ts';
import { takeGripPhoto } from './take-grip-photo.ts';

const open = new Set(['preparing', 'needs-clip', 'waiting', 'film-again']);

/** The photo that stands beside the swing now, held: a student who sends another one does not want it kept. */
const lockPhotoOf = async (tx: Tx, ctx: Context, submissionId: string) => {
  const row = await tx.clip.findFirst({ where: { academyId: ctx.academyId, photoOf: submissionId } });
  return row === null ? null : lockClip(tx, ctx, row.id);
};

/**
 * Puts a photo of the grip beside a swing that was sent, while nobody has answered it. The photo that stood there is
 * closed at once and its files go. Said twice, it counts once.
 * @throws ProblemError not-found, consent-missing, clip-not-yours, already-answered, wrong-state
 */
export const putGripPhoto = async ({ ctx, input }: Call<'putGripPhoto'>): Promise<Reply<'putGripPhoto'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    // Whose swing it is comes first: a foreign one is not there, whatever the photo.
    requireConsent((await findSubmission(tx, ctx, input.id)).student);
    // One at a time for a swing: two photos at once would each miss the other.
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`grip-photo:${input.id}`}, 0))`;
    const before = await lockPhotoOf(tx, ctx, input.id);
    if (before?.id === input.photoId) return { photo: gripPhotoOf(before) };
    if (before !== null) {
      await tx.clip.update({
        where: { academyId_id: { academyId, id: before.id } },
        data: { photoOf: null, status: 'erased', eraseAt: ctx.resources.clock.now() },
      });
    }
    await takeGripPhoto(tx, ctx, { studentId, photoId: input.photoId, submissionId: input.id });
    const swing = await lockSubmission(tx, ctx, input.id);
    if (swing.status === 'answered') throw new ProblemError('already-answered');
    if (!open.has(swing.status)) throw new ProblemError('wrong-state');
    await audit(tx, ctx, {
      action: 'put-grip-photo',
      subject: `submission:${swing.id}`,
      detail: { photoId: input.photoId, insteadOf: before?.id ?? null },
    });
    await emit(tx, ctx, 'submission.corrected', { submissionId: swing.id });
    return { photo: gripPhotoOf(await findClip(tx, ctx, input.photoId)) };
  });
};
