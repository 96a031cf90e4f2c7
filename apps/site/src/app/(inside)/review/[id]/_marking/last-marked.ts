import type { Reply } from '@ballfirst/contracts/client';
import type { Comparable } from '../_compare/choices-of.ts';
import { heardAt } from '../_compare/heard-at.ts';
import type { Marked } from './suggest-from.ts';

type Clip = Pick<Reply<'readClip'>, 'view' | 'swingLength'>;
/** Fewer marks are hardly a swing that was read. */
const leastMarks = 4;

/** The last swing of this student that was marked, from the same side, with the same club and length; null: none. */
export const lastMarked = (
  items: readonly Comparable[] | null,
  clip: Clip,
  club: Comparable['club'],
): Marked | null => {
  const [last] = (items ?? [])
    .filter((one) => one.from === 'student' && one.club === club && one.marks.length >= leastMarks)
    .filter((one) => one.clip.view === clip.view && one.clip.swingLength === clip.swingLength)
    .toSorted((a, b) => b.sentAt.localeCompare(a.sentAt));
  const picture = last?.clip.picture ?? null;
  if (last === undefined || picture === null) return null;
  const timesS = Array.from({ length: picture.frames }, (_, frame) => frame / picture.fps);
  return { marks: last.marks, timesS, heardAt: heardAt(last.clip), size: picture };
};
