import { ProblemError } from '@ballfirst/contracts/problems';
import { causes } from '@ballfirst/library/causes';
import { drills } from '@ballfirst/library/drills';
import type { Input } from '../operation-types.ts';
import type { SubmissionRow } from '../rows.ts';

const wrong = (path: string, message: string): ProblemError =>
  new ProblemError('bad-request', message, [{ path, message }]);

/** @throws ProblemError bad-request for an unknown cause or drill, mark-outside-frame for a frame its clip does not have */
export const checkReply = (row: SubmissionRow, input: Input<'saveReply'>): void => {
  const { cause, plan, frames } = input;
  if (cause !== null && !causes.some(({ id }) => id === cause)) {
    throw wrong('cause', 'This cause is not in the library.');
  }
  if (plan !== null && !drills.some(({ id }) => id === plan.drillId)) {
    throw wrong('plan.drillId', 'This drill is not in the library.');
  }
  for (const [index, { clipId, frame }] of frames.entries()) {
    const clip = row.clips.find(({ id }) => id === clipId);
    if (clip === undefined) throw wrong(`frames.${index}.clipId`, 'This video is not part of the swing.');
    if (frame >= (clip.frames ?? 0)) throw new ProblemError('mark-outside-frame');
  }
};
