import { ProblemError } from '@ballfirst/contracts/problems';
import type { ClipRow, SubmissionRow } from '../rows.ts';

/** A clip that belongs to the submission. @throws ProblemError not-found */
export const clipOfSubmission = (row: SubmissionRow, clipId: string): ClipRow => {
  const clip = row.clips.find(({ id }) => id === clipId);
  if (clip === undefined) throw new ProblemError('not-found');
  return clip;
};
