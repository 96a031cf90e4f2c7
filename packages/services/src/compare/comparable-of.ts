import { Mark } from '@ballfirst/contracts/http/submissions';
import { Club, Hand, Tally } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import { clipOf } from '../clips/clip-of.ts';
import type { Reply } from '../operation-types.ts';

/** What a clip is read with to stand beside another. */
export const comparableInclude = {
  marks: { orderBy: [{ frame: 'asc' }, { position: 'asc' }, { point: 'asc' }] },
  submission: { include: { student: true } },
} as const satisfies Prisma.ClipInclude;
export type ComparableRow = Prisma.ClipGetPayload<{ include: typeof comparableInclude }>;

type Comparable = Reply<'listComparable'>['items'][number];

/** A clip as something to compare with; null: it belongs to no submission. */
export const comparableOf = (
  row: ComparableRow,
  as: Pick<Comparable, 'from' | 'name' | 'last' | 'best'>,
): Comparable | null => {
  const { submission } = row;
  if (submission === null) return null;
  const { balls, solid } = Tally.parse(submission.tally);
  return {
    ...as,
    clip: clipOf(row),
    sentAt: submission.sentAt.toISOString(),
    club: Club.parse(submission.club),
    hand: Hand.parse(submission.student.hand),
    balls,
    solid,
    marks: row.marks.map((mark) => Mark.parse(mark)),
  };
};
