import type { Reply } from '@ballfirst/contracts/client';
import { reviewWords } from '../../../../../words/review.ts';

type Props = { clips: Reply<'readSubmission'>['clips'] };

/** Clips that cannot be stepped through: why, and what the student is told to do instead; or that they are on their way. */
export function UnreadyClips({ clips }: Props) {
  const refused = clips.filter(({ refusal }) => refusal !== null);
  const coming = clips.every(({ media, refusal }) => media === null && refusal === null);
  return (
    <>
      {refused.map(({ id, refusal }) => (
        <p key={id} className="notice look" data-refused={refusal?.code}>
          {reviewWords.refusedClip(clips.findIndex((one) => one.id === id) + 1, refusal?.words ?? '')}
        </p>
      ))}
      {coming && <p className="notice">{reviewWords.noClip}</p>}
    </>
  );
}
