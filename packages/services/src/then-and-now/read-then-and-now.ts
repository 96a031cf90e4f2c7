import { ReplyFrame } from '@ballfirst/contracts/http/review';
import { ProblemError } from '@ballfirst/contracts/problems';
import { z } from 'zod';
import { requireReader } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { sameMoment } from './same-moment.ts';
import { shownInclude, sideOf } from './side-of.ts';

const Frames = z.array(ReplyFrame);
const momentsIn = (frames: unknown): string[] => Frames.parse(frames).map(({ position }) => position);

/** Swings looked through for the first that is marked at the same moment; whoever has sent more has one among them. */
const lookedThrough = 12;

/** The first swing of the student and this one at the same moment, or no pair. @throws ProblemError not-found */
export const readThenAndNow = ({ ctx, input }: Call<'readThenAndNow'>): Promise<Reply<'readThenAndNow'>> =>
  inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = await tx.submission.findUnique({
      where: { academyId_id: { academyId, id: input.id } },
      include: { ...shownInclude, reply: { select: { frames: true, status: true } } },
    });
    if (now === null) throw new ProblemError('not-found');
    requireReader(ctx, now.studentId);
    const earlier = await tx.submission.findMany({
      where: {
        ...{ academyId, studentId: now.studentId, status: { not: 'withdrawn' } },
        sentAt: { lt: now.sentAt },
      },
      include: shownInclude,
      orderBy: [{ sentAt: 'asc' }, { id: 'asc' }],
      take: lookedThrough,
    });
    const clipIds = [now, ...earlier].flatMap(({ clips }) => clips.map(({ id }) => id));
    const marks = await tx.mark.findMany({
      where: { academyId, clipId: { in: clipIds } },
      select: { clipId: true, position: true, frame: true },
    });
    const shown = now.reply?.status === 'sent' ? momentsIn(now.reply.frames) : [];
    for (const then of earlier) {
      const found = sameMoment(then.clips, now.clips, marks, shown);
      if (found === null) continue;
      const first = await sideOf(ctx, then, found.before);
      return { pair: { moment: found.moment, first, latest: await sideOf(ctx, now, found.after) } };
    }
    return { pair: null };
  });
