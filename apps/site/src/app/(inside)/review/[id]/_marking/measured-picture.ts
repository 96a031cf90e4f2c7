import type { Reply } from '@ballfirst/contracts/client';
import type { Picture } from '@ballfirst/swing/marks/marks';

/** What the marks lie on, as the server counts it: the marks decide, not the odd late frame. */
export const measuredPicture = (picture: NonNullable<Reply<'readClip'>['picture']>): Picture => {
  const { widthPx, heightPx, frames, fps } = picture;
  return { widthPx, heightPx, frameTimesS: Array.from({ length: frames }, (_, frame) => frame / fps) };
};
