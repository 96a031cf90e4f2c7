import { ReplyFrame } from '@ballfirst/contracts/http/review';
import type { Tx } from '@ballfirst/db/with-academy';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { z } from 'zod';
import { mediaPath } from '../clips/keys.ts';
import { readFrameTimes } from '../clips/read-frame-times.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import type { SentReply } from './find-sent-reply.ts';
import { pointWords } from './point-words.ts';

type Frames = Reply<'readReply'>['frames'];

const Stored = z.array(ReplyFrame);

/** The coach's frames with the marks of their moments; `timeS` is the frame's own time, whatever the camera's rate. */
export const replyFrames = async (
  tx: Tx,
  ctx: Context,
  row: SentReply,
  hand: PlayingHand,
): Promise<Frames> => {
  const { academyId } = ctx;
  const chosen = Stored.parse(row.frames);
  const marks = await tx.mark.findMany({
    where: {
      academyId,
      clipId: { in: chosen.map(({ clipId }) => clipId) },
      position: { in: chosen.map(({ position }) => position) },
    },
    orderBy: [{ position: 'asc' }, { point: 'asc' }],
  });
  const frames: Frames = [];
  const times = new Map<string, readonly number[] | null>();
  for (const { clipId, frame, position, caption } of chosen) {
    const clip = row.submission.clips.find(({ id }) => id === clipId);
    if (clip === undefined || clip.widthPx === null || clip.heightPx === null) continue;
    if (!times.has(clipId)) times.set(clipId, await readFrameTimes(ctx, clipId));
    frames.push({
      clipId,
      frame,
      timeS: times.get(clipId)?.[frame] ?? frame / (clip.fps ?? 30),
      caption,
      rendition: mediaPath(clipId, 'rendition.mp4'),
      poster: mediaPath(clipId, 'poster.jpg'),
      marks: marks
        .filter((mark) => mark.clipId === clipId && mark.position === position)
        .map(({ point, x, y }) => ({ point, name: pointWords(point, hand), x, y })),
      widthPx: clip.widthPx,
      heightPx: clip.heightPx,
    });
  }
  return frames;
};
