import { ProblemError } from '@ballfirst/contracts/problems';
import { Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import { requirePerson } from '../authorise.ts';
import { lockClip } from '../clips/lock-clip.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { Call, Input, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { measureAgain } from '../review/measure-again.ts';
import type { SubmissionRow } from '../rows.ts';
import { checkTally } from './check-tally.ts';
import { correctHand } from './correct-hand.ts';
import { findSubmission, lockSubmission } from './lock-submission.ts';
import { placeAgain } from './place-again.ts';
import { submissionOf } from './submission-of.ts';

const open = new Set(['preparing', 'needs-clip', 'waiting', 'film-again']);

/** Held for the one who may put it right: its student until it is answered, or the coach who has it. */
const lockForCorrecting = async (tx: Tx, ctx: Context, id: string): Promise<SubmissionRow> => {
  if (requirePerson(ctx).role !== 'student') return requireClaim(tx, ctx, id);
  const row = await lockSubmission(tx, ctx, id);
  if (row.status === 'answered') throw new ProblemError('already-answered');
  if (!open.has(row.status)) throw new ProblemError('wrong-state');
  return row;
};

/** Clips before their submission, and in one order for everybody: so no two writers wait on each other. */
const lockClipsOf = async (
  tx: Tx,
  ctx: Context,
  row: SubmissionRow,
  asked: Input<'correctSubmission'>['clips'],
) => {
  const own = new Set(row.clips.map(({ id }) => id));
  if (asked?.some(({ id }) => !own.has(id)) === true) throw new ProblemError('clip-not-yours');
  for (const { id } of asked?.toSorted((a, b) => (a.id < b.id ? -1 : 1)) ?? []) await lockClip(tx, ctx, id);
};

/**
 * Puts right what was said of a swing. What depends on it is computed again: its place by the tally, the measurements
 * by club, hand, view and swing length. Marks stay: they are points on pictures.
 * @throws ProblemError not-found, changed-meanwhile, already-answered, wrong-state, not-claimed, already-claimed,
 * tally-over-total, tally-empty, clip-not-yours
 */
export const correctSubmission = async ({
  ctx,
  input,
}: Call<'correctSubmission'>): Promise<Reply<'correctSubmission'>> => {
  const { id, version, hand, clips, ...told } = input;
  if (told.tally !== undefined) checkTally(told.tally);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const seen = await findSubmission(tx, ctx, id);
    if (hand !== undefined && hand !== seen.student.hand) await correctHand(tx, ctx, seen.studentId, hand);
    await lockClipsOf(tx, ctx, seen, clips);
    const row = await lockForCorrecting(tx, ctx, id);
    if (row.version !== version) throw new ProblemError('changed-meanwhile');
    for (const { id: clipId, ...facts } of clips ?? []) {
      await tx.clip.update({ where: { academyId_id: { academyId, id: clipId } }, data: facts });
    }
    const place = told.tally === undefined ? {} : await placeAgain(tx, ctx, row, Tally.parse(told.tally));
    await tx.submission.update({
      where: { academyId_id: { academyId, id } },
      data: { ...told, ...place, version: { increment: 1 } },
    });
    await measureAgain(tx, ctx, await findSubmission(tx, ctx, id));
    const changed = Object.keys({ ...told, ...(hand && { hand }), ...(clips && { clips }) });
    await audit(tx, ctx, { action: 'correct-submission', subject: `submission:${id}`, detail: { changed } });
    await emit(tx, ctx, 'submission.corrected', { submissionId: id });
    return submissionOf(await findSubmission(tx, ctx, id), ctx.resources.clock.now());
  });
};
