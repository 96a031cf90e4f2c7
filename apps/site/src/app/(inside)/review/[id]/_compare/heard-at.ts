import type { Reply } from '@ballfirst/contracts/client';

/** The frame at which the strike was heard, where the machine is not too unsure to tie a swing by it. */
export const heardAt = ({ suggestion }: Pick<Reply<'readClip'>, 'suggestion'>): number | null => {
  const impact = suggestion?.impact ?? null;
  return impact === null || impact.confidence === 'unsure' ? null : impact.frame;
};
