import { Submission } from '@ballfirst/contracts/http/submissions';
import type { OpenSubmission } from '@ballfirst/db/reads/open-submission';
import { clipOf } from '../clips/clip-of.ts';
import type { Reply } from '../operation-types.ts';

const claimOf = (
  { claimedBy, claimedByName, claimExpiresAt }: OpenSubmission['submission'],
  now: Date,
): Reply<'readSubmission'>['claim'] => {
  if (claimedBy === null || claimedByName === null || claimExpiresAt === null) return null;
  if (new Date(claimExpiresAt) <= now) return null;
  return { membershipId: claimedBy, name: claimedByName, expiresAt: claimExpiresAt };
};

/** The submission of a hot read as the contract says it. */
export const openedSubmission = (
  { submission, student, clips, reply }: OpenSubmission,
  now: Date,
): Reply<'readSubmission'> =>
  Submission.parse({
    ...submission,
    student,
    claim: claimOf(submission, now),
    clips: clips.map((clip) => clipOf({ ...clip, submissionId: submission.id })),
    replyId: reply?.status === 'sent' ? reply.id : null,
  });
