import { ProblemError } from '@ballfirst/contracts/problems';
import type { Mark } from '@ballfirst/swing/marks/marks';

const words = (id: string): string => id.replaceAll('-', ' ');
const named = ({ point, position }: Mark): string => `${words(point)} at ${words(position)}`;

/** Two points of one picture cannot be told apart closer than this, in pixels. */
const leastPx = 0.5;

const clash = (mark: Mark, other: Mark): string | null => {
  if (mark.position === other.position && mark.point === other.point) {
    return `There are two marks for ${named(mark)}. Send one.`;
  }
  const near = Math.hypot(mark.x - other.x, mark.y - other.y) < leastPx;
  return near && mark.frame === other.frame && mark.point !== other.point
    ? `The mark for ${named(mark)} lies on that for ${named(other)}. Place one of them again.`
    : null;
};

/** @throws ProblemError bad-request naming two marks of one place, or two points on one spot of a frame */
export const checkApart = (marks: readonly Mark[]): void => {
  for (const [index, mark] of marks.entries()) {
    for (const other of marks.slice(0, index)) {
      const message = clash(mark, other);
      if (message !== null)
        throw new ProblemError('bad-request', message, [{ path: `marks.${index}`, message }]);
    }
  }
};
