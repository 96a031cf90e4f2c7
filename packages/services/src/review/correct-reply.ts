import { ReplyFilm } from '@ballfirst/contracts/http/teaching';
import { ProblemError } from '@ballfirst/contracts/problems';
import { Prisma } from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSentReply, type SentReply } from '../practice/find-sent-reply.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';
import { filmForReply } from '../teaching/film-for-reply.ts';
import { namedCauses } from '../teaching/named-causes.ts';
import { replyDraftOf } from './reply-draft-of.ts';

/** What the film of a corrected reply is from now on: as it was, unless the correction speaks of it. */
const filmAfter = async (tx: Tx, reply: SentReply, wanted: string | null | undefined) => {
  const held = ReplyFilm.nullable().parse(reply.teachingClip);
  if (wanted === undefined || wanted === held?.cause) return { film: held, same: true };
  const film = await filmForReply(tx, reply.academyId, { wanted, named: namedCauses(reply), held });
  return { film, same: film === held };
};

/**
 * Corrects the words of a reply that has gone out, or the film that goes with it. What it said before is kept and stays
 * readable to the student, who is told. Cause and drill are not corrected: another drill is another reply.
 * @throws ProblemError not-found, changed-meanwhile, bad-request for a film of a cause it does not name or that is not kept
 */
export const correctReply = async ({ ctx, input }: Call<'correctReply'>): Promise<Reply<'correctReply'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const { submissionId } = await findSentReply(tx, ctx, input.id);
    await lockSubmission(tx, ctx, submissionId);
    const reply = await findSentReply(tx, ctx, input.id);
    if (reply.version !== input.version) throw new ProblemError('changed-meanwhile');
    const { film, same } = await filmAfter(tx, reply, input.teachingClip);
    if (reply.words === input.words && same) return replyDraftOf(reply);
    const before = reply.teachingClip ?? Prisma.DbNull;
    await tx.replyVersion.create({
      data: {
        ...{ academyId, id: newId(), replyId: reply.id, words: reply.words, teachingClip: before },
        ...{ byMembership: reply.byMembership, at: reply.correctedAt ?? reply.sentAt },
      },
    });
    const corrected = await tx.reply.update({
      where: { academyId_id: { academyId, id: reply.id } },
      data: {
        ...{ words: input.words, correctedAt: now, updatedAt: now, byMembership: membershipId },
        ...{ teachingClip: film ?? Prisma.DbNull, version: { increment: 1 } },
      },
    });
    await audit(tx, ctx, {
      action: 'correct-reply',
      subject: `reply:${reply.id}`,
      detail: { version: corrected.version, film: film?.cause ?? null },
    });
    await emit(tx, ctx, 'reply.corrected', { replyId: reply.id, version: corrected.version });
    return replyDraftOf(corrected);
  });
};
