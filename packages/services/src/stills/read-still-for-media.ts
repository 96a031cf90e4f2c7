import { ReplyFrame } from '@ballfirst/contracts/http/review';
import { ProblemError } from '@ballfirst/contracts/problems';
import { z } from 'zod';
import { requirePerson } from '../authorise.ts';
import { requireOpen } from '../clips/require-open.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { stillKey } from './still-key.ts';

const Stored = z.array(ReplyFrame);

/**
 * Where the picture of a reply's frame lies, when the actor may read the reply and its video is open.
 * @throws ProblemError not-found, also while it is not made; consent-missing once consent was withdrawn
 */
export const readStillForMedia = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { replyId: string; index: number };
}): Promise<{ key: string; type: string; version: number }> => {
  requirePerson(ctx);
  const { replyId, index } = input;
  return inTransaction(ctx, async (tx) => {
    const row = await findSentReply(tx, ctx, replyId);
    const frame = Stored.parse(row.frames)[index];
    const clip = row.submission.clips.find(({ id }) => id === frame?.clipId);
    if (clip === undefined) throw new ProblemError('not-found');
    requireOpen(clip);
    if (row.stillsVersion === null) throw new ProblemError('not-found');
    return {
      key: stillKey({ academyId: ctx.academyId, replyId }, index),
      type: 'image/jpeg',
      version: row.stillsVersion,
    };
  });
};
