import type { Reply } from '@ballfirst/contracts/client';
import type { Picture } from '@ballfirst/swing/marks/marks';

/**
 * What the marks lie on, as the server takes it.
 *
 * @param timesS - the true times, once they are known; not taken where they are not as many as the frames
 */
export const measuredPicture = (
  picture: NonNullable<Reply<'readClip'>['picture']>,
  timesS: readonly number[] | null,
): Picture => {
  const { widthPx, heightPx, frames, fps } = picture;
  const even = () => Array.from({ length: frames }, (_, frame) => frame / fps);
  return { widthPx, heightPx, frameTimesS: timesS?.length === frames ? timesS : even() };
};
