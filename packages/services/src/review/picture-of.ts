import { ProblemError } from '@ballfirst/contracts/problems';
import { Club, Hand, SwingLength, View } from '@ballfirst/contracts/words';
import type { Picture, Setting } from '@ballfirst/swing/marks/marks';

/**
 * What the marks of a clip lie on, its frames counted evenly; `timedPicture` has their true times.
 * @throws ProblemError wrong-state while the clip is not ready
 */
export const pictureOf = (clip: {
  readonly widthPx: number | null;
  readonly heightPx: number | null;
  readonly frames: number | null;
  readonly fps: number | null;
}): Picture => {
  const { widthPx, heightPx, frames, fps } = clip;
  if (widthPx === null || heightPx === null || frames === null || fps === null) {
    throw new ProblemError('wrong-state', 'This video is not ready yet. Wait a moment and try again.');
  }
  return { widthPx, heightPx, frameTimesS: Array.from({ length: frames }, (_, frame) => frame / fps) };
};

/** The swing as it was filmed. */
export const settingOf = (
  clip: { readonly view: string; readonly swingLength: string },
  swing: { readonly hand: string; readonly club: string },
): Setting => ({
  view: View.parse(clip.view),
  swingLength: SwingLength.parse(clip.swingLength),
  hand: Hand.parse(swing.hand),
  club: Club.parse(swing.club),
});
