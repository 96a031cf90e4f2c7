import { ReplyFrame } from '@ballfirst/contracts/http/review';
import type { Tx } from '@ballfirst/db/with-academy';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { z } from 'zod';
import { readFrameTimes } from '../clips/read-frame-times.ts';
import type { Context } from '../context.ts';
import type { SentReply } from '../practice/find-sent-reply.ts';
import { pointWords } from '../practice/point-words.ts';
import { type StillLine, stillLines } from './still-lines.ts';

/** A frame that a coach chose, with what is drawn on it. `index`: its place in the reply; `timeS`: its own time. */
export type ChosenFrame = {
  readonly index: number;
  readonly clipId: string;
  readonly frame: number;
  readonly timeS: number;
  readonly caption: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly marks: { readonly point: string; readonly name: string; readonly x: number; readonly y: number }[];
  readonly lines: readonly StillLine[];
};

const Stored = z.array(ReplyFrame);

/** The frames of a sent reply that can be shown: one whose video is erased is left out. */
export const chosenFrames = async (
  tx: Tx,
  ctx: Context,
  row: SentReply,
  hand: PlayingHand,
): Promise<ChosenFrame[]> => {
  const { academyId } = ctx;
  const stored = Stored.parse(row.frames);
  const positions = ['address', ...stored.map(({ position }) => position)];
  const all = await tx.mark.findMany({
    where: {
      academyId,
      clipId: { in: stored.map(({ clipId }) => clipId) },
      position: { in: [...new Set(positions)] },
    },
    orderBy: [{ position: 'asc' }, { point: 'asc' }],
  });
  const frames: ChosenFrame[] = [];
  const times = new Map<string, readonly number[] | null>();
  for (const [index, { clipId, frame, position, caption }] of stored.entries()) {
    const clip = row.submission.clips.find(({ id }) => id === clipId);
    if (clip?.status !== 'ready' || clip.widthPx === null || clip.heightPx === null) continue;
    if (!times.has(clipId)) times.set(clipId, await readFrameTimes(ctx, clipId));
    const marks = all.filter((mark) => mark.clipId === clipId);
    frames.push({
      ...{ index, clipId, frame, caption, widthPx: clip.widthPx, heightPx: clip.heightPx },
      timeS: times.get(clipId)?.[frame] ?? frame / (clip.fps ?? 30),
      marks: marks
        .filter((mark) => mark.position === position)
        .map(({ point, x, y }) => ({ point, name: pointWords(point, hand), x, y })),
      lines: stillLines(marks, position, clip.heightPx),
    });
  }
  return frames;
};
