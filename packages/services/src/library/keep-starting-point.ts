import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { templateOf } from '@ballfirst/practice/template-of';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { handOf } from '../practice/programme-of.ts';
import { KeptStart, startingPointOf } from './starting-point-of.ts';
import { valuesOfReply } from './values-of-reply.ts';

/**
 * Keeps a sent reply to begin the next one from: words with variables in place of this player's name, club and values,
 * ticks and drill. Nothing that tells who it was written for is kept.
 * @throws ProblemError not-found, wrong-state for a reply without a cause
 */
export const keepStartingPoint = async ({
  ctx,
  input,
}: Call<'keepStartingPoint'>): Promise<Reply<'keepStartingPoint'>> => {
  const { name } = requireStaff(ctx);
  return once(ctx, 'keepStartingPoint', async (tx) => {
    const { academyId } = ctx;
    const reply = await findSentReply(tx, ctx, input.id);
    if (reply.cause === null) {
      throw new ProblemError('wrong-state', 'This reply names no cause, so nobody would find it again.');
    }
    const { membershipId } = reply.submission.student;
    const player = await tx.membership.findUniqueOrThrow({
      where: { academyId_id: { academyId, id: membershipId } },
    });
    const values = await valuesOfReply(tx, ctx, reply, player.name);
    const row = await tx.libraryItem.create({
      data: {
        ...{ academyId, kind: 'starting-point', key: newId(), version: 1 },
        content: KeptStart.parse({
          ...{ cause: reply.cause, setUpTicks: reply.setUpTicks, plan: reply.plan, by: name },
          ...{ words: templateOf(reply.words, values, handOf(reply.submission.student)), replyId: reply.id },
        }),
        at: ctx.resources.clock.now(),
      },
    });
    await audit(tx, ctx, {
      action: 'keep-starting-point',
      subject: `starting-point:${row.key}`,
      detail: { replyId: reply.id },
    });
    return startingPointOf(row);
  });
};
