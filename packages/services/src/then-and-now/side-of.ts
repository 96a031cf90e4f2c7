import { Tally } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import { mediaPath } from '../clips/keys.ts';
import { readFrameTimes } from '../clips/read-frame-times.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';

/** A swing with the clips that can be shown, the first first. */
export const shownInclude = {
  clips: { where: { status: 'ready' }, orderBy: { createdAt: 'asc' } },
} as const satisfies Prisma.SubmissionInclude;
export type ShownSwing = Prisma.SubmissionGetPayload<{ include: typeof shownInclude }>;
type Side = NonNullable<Reply<'readOwnTrial'>['first']>;

/** One swing of a pair: when, its balls, and the picture of a frame; `frame` null: the beginning of its first clip. */
export const sideOf = async (
  ctx: Context,
  swing: ShownSwing,
  at: { readonly clipId: string; readonly frame: number } | null,
): Promise<Side> => {
  const clip = at === null ? swing.clips[0] : swing.clips.find(({ id }) => id === at.clipId);
  const drawable = clip !== undefined && clip.widthPx !== null && clip.heightPx !== null;
  const times = drawable && at !== null ? await readFrameTimes(ctx, clip.id) : null;
  return {
    submissionId: swing.id,
    sentAt: swing.sentAt.toISOString(),
    tally: Tally.parse(swing.tally),
    picture: drawable
      ? {
          rendition: mediaPath(clip.id, 'rendition.mp4'),
          poster: mediaPath(clip.id, 'poster.jpg'),
          timeS: at === null ? 0 : (times?.[at.frame] ?? at.frame / (clip.fps ?? 30)),
          widthPx: clip.widthPx ?? 0,
          heightPx: clip.heightPx ?? 0,
        }
      : null,
  };
};
