import type { Tx } from '@ballfirst/db/with-academy';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { mediaPath } from '../clips/keys.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { chosenFrames } from '../stills/chosen-frames.ts';
import { describeStill } from '../stills/describe-still.ts';
import { stillPath } from '../stills/still-key.ts';
import type { SentReply } from './find-sent-reply.ts';

/** The coach's frames with the marks of their moments; `timeS` is the frame's own time, whatever the camera's rate. */
export const replyFrames = async (
  tx: Tx,
  ctx: Context,
  row: SentReply,
  hand: PlayingHand,
): Promise<Reply<'readReply'>['frames']> => {
  const chosen = await chosenFrames(tx, ctx, row, hand);
  return chosen.map(({ index, clipId, frame, timeS, caption, marks, lines, widthPx, heightPx }) => ({
    ...{ clipId, frame, timeS, caption, marks, widthPx, heightPx },
    rendition: mediaPath(clipId, 'rendition.mp4'),
    poster: mediaPath(clipId, 'poster.jpg'),
    still: row.stillsVersion === null ? null : stillPath(row.id, index),
    described: describeStill(
      caption,
      marks.map(({ name }) => name),
      lines.map(({ name }) => name),
    ),
  }));
};
