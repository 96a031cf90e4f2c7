import { Mark } from '@ballfirst/contracts/http/submissions';
import { Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import type { StudentSet } from '@ballfirst/diagnosis/fat-risk-with';
import { readArc } from '@ballfirst/swing/arc/read-arc';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { settingOf } from './picture-of.ts';
import { timedPicture, trailOf } from './trail-of.ts';

type Swing = {
  readonly id: string;
  readonly studentId: string;
  readonly hand: string;
  readonly club: string;
  readonly lie: string;
  readonly tally: unknown;
  readonly sentAt: Date | string;
};

/** Older swings and line tests say little of how the club comes down today. Common practice, no source. */
const recentMs = 28 * 86_400_000;
const mostSwings = 10;

/**
 * What is known of a student's set with the club of a swing: the arcs of that and recent swings face-on, the newest line
 * test, and how many balls met the ground first. Marks are read only of clips that have the clubhead over frames.
 */
export const studentSetOf = async (tx: Tx, ctx: Context, swing: Swing): Promise<Reply<'readStudentSet'>> => {
  const { academyId } = ctx;
  const { studentId, club, hand } = swing;
  const sentAt = new Date(swing.sentAt);
  const since = new Date(sentAt.getTime() - recentMs);
  const submissions = await tx.submission.findMany({
    where: { academyId, studentId, club, sentAt: { gte: since, lte: sentAt } },
    select: {
      id: true,
      clips: {
        where: { status: 'ready', view: 'face-on', NOT: { trail: { equals: [] } } },
        include: { marks: true },
        orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
      },
    },
    orderBy: [{ sentAt: 'desc' }, { id: 'desc' }],
    take: mostSwings,
  });
  const found = submissions.flatMap(({ id, clips }) => clips.map((clip) => ({ setUp: id, clip })));
  const swings: StudentSet['swings'][number][] = [];
  for (const { setUp, clip } of found.slice(0, mostSwings)) {
    const trail = trailOf(clip);
    const marks = clip.marks.map((mark) => Mark.parse(mark));
    const picture = await timedPicture(ctx, clip, { marks, trail });
    const setting = settingOf(clip, { hand, club });
    const arc = readArc(trail, marks, picture, setting);
    if ('why' in arc) continue;
    swings.push({ clipId: clip.id, setUp, swingLength: setting.swingLength, arc });
  }
  const brushes = await tx.lineTest.findFirst({
    where: { academyId, studentId, at: { gte: since } },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
  const { balls, fat } = Tally.parse(swing.tally);
  return {
    ...{ lie: swing.lie, setUp: swing.id, swings, lineTestMm: brushes?.startsMm ?? null },
    balls: { fat: Math.min(fat, balls), of: balls },
  };
};
