import { Standing, Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Position } from '@ballfirst/swing/marks';
import { mediaPath } from '../clips/keys.ts';
import { readFrameTimes } from '../clips/read-frame-times.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import type { StudentRow } from '../rows.ts';
import { trialDayOf } from '../students/trial-day-of.ts';

type OwnTrial = Reply<'readOwnTrial'>;
type Side = NonNullable<OwnTrial['first']>;

/** Moments in which a change shows best, that first. Common practice, no source. */
const telling: readonly Position[] = ['impact', 'finish', 'lead-arm-parallel-down', 'top', 'address'];

/** The student's own trial, as it stands. */
export const ownTrialOf = async (tx: Tx, ctx: Context, student: StudentRow): Promise<OwnTrial> => {
  const { academyId } = ctx;
  const own = { academyId, studentId: student.id };
  const now = ctx.resources.clock.now();
  const swings = await tx.submission.findMany({
    where: { ...own, status: { notIn: ['withdrawn'] } },
    include: { clips: { where: { status: 'ready' }, orderBy: { createdAt: 'asc' } } },
    orderBy: [{ sentAt: 'asc' }, { id: 'asc' }],
  });
  const first = swings[0] ?? null;
  const latest = swings.length > 1 ? (swings.at(-1) ?? null) : null;
  const pair = first === null || latest === null ? null : await momentsOfBoth(tx, academyId, first, latest);
  const sideOf = async (swing: NonNullable<typeof first>, frame: number | null): Promise<Side> => {
    const [clip] = swing.clips;
    const drawable = clip !== undefined && clip.widthPx !== null && clip.heightPx !== null;
    const times = drawable && frame !== null ? await readFrameTimes(ctx, clip.id) : null;
    return {
      submissionId: swing.id,
      sentAt: swing.sentAt.toISOString(),
      tally: Tally.parse(swing.tally),
      picture: drawable
        ? {
            rendition: mediaPath(clip.id, 'rendition.mp4'),
            poster: mediaPath(clip.id, 'poster.jpg'),
            timeS: frame === null ? 0 : (times?.[frame] ?? frame / (clip.fps ?? 30)),
            widthPx: clip.widthPx ?? 0,
            heightPx: clip.heightPx ?? 0,
          }
        : null,
    };
  };
  return {
    standing: Standing.parse(student.standing),
    day: trialDayOf({ ...student, zone: student.membership.zone }, now),
    days: student.academy.trialDays,
    endsAt: student.trialEndsAt?.toISOString() ?? null,
    priceWords: student.academy.priceWords,
    moment: pair?.moment ?? null,
    first: first === null ? null : await sideOf(first, pair?.first ?? null),
    latest: latest === null ? null : await sideOf(latest, pair?.latest ?? null),
    replies: await tx.reply.count({ where: { academyId, status: 'sent', submission: own } }),
    practiceEntries: await tx.practiceEntry.count({ where: own }),
    rungsPassed: await tx.practiceEntry.count({ where: { ...own, verdict: 'passed' } }),
    joinAskedAt: student.joinAskedAt?.toISOString() ?? null,
  };
};

type Swing = { readonly clips: readonly { readonly id: string; readonly view: string }[] };

/** The most telling moment marked in both swings, seen from the same side; null where there is none. */
const momentsOfBoth = async (tx: Tx, academyId: string, first: Swing, latest: Swing) => {
  const [before] = first.clips;
  const [after] = latest.clips;
  if (before === undefined || after === undefined || before.view !== after.view) return null;
  const marks = await tx.mark.findMany({ where: { academyId, clipId: { in: [before.id, after.id] } } });
  const frameOf = (clipId: string, position: string) =>
    marks.find((mark) => mark.clipId === clipId && mark.position === position)?.frame;
  for (const moment of telling) {
    const [from, to] = [frameOf(before.id, moment), frameOf(after.id, moment)];
    if (from !== undefined && to !== undefined) return { moment, first: from, latest: to };
  }
  return null;
};
