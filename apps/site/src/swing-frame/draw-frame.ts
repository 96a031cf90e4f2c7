import { retryAfterS } from '../frames/retry-after.ts';

/** Less than half a frame at 480 frames a second: an instant that lies within the frame that begins at `timeS`. */
export const withinFrameS = 0.001;

/**
 * Draws the frame of a rendition that is shown at `timeS` on a canvas, decoding only what leads to it.
 *
 * @returns false where this browser cannot decode the video
 * @param signal - aborted when the picture is no longer wanted
 * @throws when the video cannot be read
 */
export const drawFrame = async (
  canvas: HTMLCanvasElement,
  rendition: string,
  timeS: number,
  signal: AbortSignal,
): Promise<boolean> => {
  // Only a page with a picture pays for the reader of videos.
  const { ALL_FORMATS, Input, UrlSource, VideoSampleSink } = await import('mediabunny');
  const input = new Input({
    formats: ALL_FORMATS,
    source: new UrlSource(rendition, { getRetryDelay: retryAfterS }),
  });
  signal.addEventListener('abort', () => input.dispose(), { once: true });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (track === null || !(await track.canDecode())) return false;
    const sample = await new VideoSampleSink(track).getSample(timeS + withinFrameS);
    const context = canvas.getContext('2d');
    if (sample === null || context === null) return false;
    canvas.width = sample.displayWidth;
    canvas.height = sample.displayHeight;
    sample.draw(context, 0, 0, canvas.width, canvas.height);
    sample.close();
    return true;
  } finally {
    input.dispose();
  }
};
