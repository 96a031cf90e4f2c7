import type { Reply } from '@ballfirst/contracts/client';

type Review = Reply<'openReview'>;

/** The clips that can be stepped through, as they were sent or put right, each with its stored marks. */
export const readyClips = (clips: Review['submission']['clips'], marking: Review['marking']) =>
  clips.flatMap((clip) => {
    const { media, picture } = clip;
    const stored = marking.find(({ clipId }) => clipId === clip.id);
    if (media === null || picture === null || stored === undefined) return [];
    return [{ clip: { ...clip, media, picture }, stored }];
  });
