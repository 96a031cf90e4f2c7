import { ProblemError } from '@ballfirst/contracts/problems';
import { Prisma } from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { Call, Reply } from '../operation-types.ts';
import { filmForReply } from '../teaching/film-for-reply.ts';
import { namedCauses } from '../teaching/named-causes.ts';
import { checkMore } from './check-more.ts';
import { checkReply } from './check-reply.ts';
import { replyDraftOf } from './reply-draft-of.ts';

/**
 * Saves the draft of a reply. Version 0 is the draft that is not there yet.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, changed-meanwhile, wrong-state, bad-request,
 * mark-outside-frame, too-much-at-once
 */
export const saveReply = async ({ ctx, input }: Call<'saveReply'>): Promise<Reply<'saveReply'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await requireClaim(tx, ctx, input.id);
    checkReply(row, input);
    const { moreCauses, isMore } = checkMore(input);
    const key = { academyId_submissionId: { academyId, submissionId: row.id } };
    const before = await tx.reply.findUnique({ where: key });
    if (before?.status === 'sending') {
      throw new ProblemError('wrong-state', 'This reply is on its way. Take it back before you change it.');
    }
    if ((before?.version ?? 0) !== input.version) throw new ProblemError('changed-meanwhile');
    const film = await filmForReply(tx, academyId, {
      wanted: input.teachingClip ?? null,
      named: namedCauses({ cause: input.cause, moreCauses }),
      held: before?.teachingClip,
    });
    const version = input.version + 1;
    const now = ctx.resources.clock.now();
    const written = {
      words: input.words,
      cause: input.cause,
      setUpTicks: [...new Set(input.setUpTicks)],
      frames: input.frames,
      plan: input.plan ?? Prisma.DbNull,
      moreCauses,
      // The yes stands from when it was given, until nothing asks for it any more.
      moreAgreedAt: isMore ? (before?.moreAgreedAt ?? now) : null,
      teachingClip: film ?? Prisma.DbNull,
      withTalk: input.withTalk ?? true,
      byMembership: membershipId,
      version,
      updatedAt: now,
    };
    const saved =
      before === null
        ? await tx.reply.create({
            data: { academyId, id: newId(), submissionId: row.id, status: 'draft', ...written },
          })
        : await tx.reply.update({ where: key, data: written });
    await audit(tx, ctx, { action: 'save-reply', subject: `reply:${saved.id}`, detail: { version } });
    if (isMore && (before?.moreAgreedAt ?? null) === null) {
      await audit(tx, ctx, {
        action: 'agree-to-more',
        subject: `reply:${saved.id}`,
        detail: { causes: moreCauses, ticks: written.setUpTicks.length },
      });
    }
    return replyDraftOf(saved);
  });
};
