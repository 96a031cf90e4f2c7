import type { Reply } from '@ballfirst/contracts/client';

type Review = Reply<'openReview'>;

/** The clips that can be stepped through, each with its marks and what they show. */
export const readyClips = ({ submission, marking, evidence }: Review) =>
  submission.clips.flatMap((clip) => {
    const { media, picture } = clip;
    const marks = marking.find(({ clipId }) => clipId === clip.id);
    if (media === null || picture === null || marks === undefined) return [];
    return [
      {
        clip: { ...clip, media, picture },
        marking: marks,
        evidence: evidence.find(({ clipId }) => clipId === clip.id) ?? null,
      },
    ];
  });
