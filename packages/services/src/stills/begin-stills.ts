import { requireSystem } from '../authorise.ts';
import { renditionKey } from '../clips/keys.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { handOf } from '../practice/programme-of.ts';
import { type ChosenFrame, chosenFrames } from './chosen-frames.ts';
import { stillKey } from './still-key.ts';

/** What is to be drawn for a reply: `from` and `to` are keys of files. */
export type StillsToMake = {
  readonly version: number;
  readonly stills: readonly (ChosenFrame & { readonly from: string; readonly to: string })[];
};

/**
 * What pictures a sent reply needs; null when they lie ready for this version of it.
 * @throws ProblemError not-found
 */
export const beginStills = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { replyId: string };
}): Promise<StillsToMake | null> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const { replyId } = input;
  return inTransaction(ctx, async (tx) => {
    const row = await findSentReply(tx, ctx, replyId);
    if (row.stillsVersion === row.version) return null;
    const chosen = await chosenFrames(tx, ctx, row, handOf(row.submission.student));
    return {
      version: row.version,
      stills: chosen.map((frame) => ({
        ...frame,
        from: renditionKey({ academyId, clipId: frame.clipId }),
        to: stillKey({ academyId, replyId }, frame.index),
      })),
    };
  });
};
