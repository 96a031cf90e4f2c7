import type { Tx } from '@ballfirst/db/with-academy';
import type { Marked } from '@ballfirst/diagnosis/evidence-of';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { readMarking } from './marking-of.ts';
import { settingOf } from './picture-of.ts';
import { timedPicture } from './trail-of.ts';

/** The ready clips of a submission with all that is marked and seen on them. */
export const markedClips = async (
  tx: Tx,
  ctx: Context,
  row: SubmissionRow,
): Promise<(Marked & { clipId: string })[]> => {
  const found: (Marked & { clipId: string })[] = [];
  for (const clip of row.clips.filter(({ status }) => status === 'ready')) {
    const { marks, observations, trail } = await readMarking(tx, ctx, clip);
    found.push({
      clipId: clip.id,
      marks,
      observations,
      trail,
      picture: await timedPicture(ctx, clip, { marks, trail }),
      setting: settingOf(clip, { hand: row.student.hand, club: row.club }),
    });
  }
  return found;
};
