import type { Tx } from '@ballfirst/db/with-academy';
import { clipOf } from '../clips/clip-of.ts';
import type { Reply } from '../operation-types.ts';
import { talkInclude, talkThroughOf } from './talk-through-of.ts';

/** The talk-through of a sent reply as its student replays it; null: none, or its clip is no longer there. */
export const heardTalk = async (
  tx: Tx,
  academyId: string,
  submissionId: string,
): Promise<Reply<'readReply'>['talkThrough']> => {
  const row = await tx.talkThrough.findUnique({
    where: { academyId_submissionId: { academyId, submissionId } },
    include: { ...talkInclude, clip: true },
  });
  if (row === null) return null;
  const { picture, media } = clipOf(row.clip);
  if (picture === null || media === null) return null;
  const { by: _by, at: _at, ...heard } = talkThroughOf(row);
  return { ...heard, picture, media };
};
