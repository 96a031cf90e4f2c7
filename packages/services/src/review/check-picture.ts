import { ProblemError } from '@ballfirst/contracts/problems';
import type { Picture } from '@ballfirst/swing/marks/marks';

/** @throws ProblemError bad-request naming the first frame that is not shown after the one before it */
export const checkFrameTimes = ({ frameTimesS }: Picture): void => {
  const wrong = frameTimesS.findIndex((time, frame) => frame > 0 && time <= (frameTimesS[frame - 1] ?? 0));
  if (wrong === -1) return;
  const message = `Frame ${wrong} is not later than frame ${wrong - 1}: frame times must rise.`;
  throw new ProblemError('bad-request', message, [{ path: `picture.frameTimesS.${wrong}`, message }]);
};
