import type { FrameSource } from './frame-source.ts';
import { frameAt, middleOf } from './frame-table.ts';

/** How long a picture may come after its seek was called done. */
const lateMs = 250;

const happens = (video: HTMLVideoElement, name: 'loadeddata' | 'seeked'): Promise<void> =>
  new Promise((resolve, reject) => {
    const settle = (done: () => void) => () => {
      video.removeEventListener(name, good);
      video.removeEventListener('error', bad);
      done();
    };
    const good = settle(resolve);
    const bad = settle(() => reject(new Error('The video cannot be shown.')));
    video.addEventListener(name, good);
    video.addEventListener('error', bad);
  });

/**
 * When the element has taken the picture of a frame up: the seek alone may be told done while the one before still stands.
 * A browser that does not say, or has no new picture to take up, is waited for no longer than a moment.
 */
const takesUp = (video: HTMLVideoElement, timesS: readonly number[], wanted: number) => {
  let called = 0;
  let taken = () => {};
  const up = new Promise<void>((resolve) => {
    taken = resolve;
  });
  const ask = (): void => {
    called = video.requestVideoFrameCallback((_, { mediaTime }) => {
      if (frameAt(timesS, mediaTime) === wanted) taken();
      else ask();
    });
  };
  const canTell = 'requestVideoFrameCallback' in video;
  if (canTell) ask();
  return async (): Promise<void> => {
    if (!canTell) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<void>((resolve) => {
      timer = setTimeout(resolve, lateMs);
    });
    await Promise.race([up, late]);
    clearTimeout(timer);
    video.cancelVideoFrameCallback(called);
  };
};

/** Frames of a video element that is stopped in the middle of each: everywhere, and right where the browser
 * says which picture it took up (https://wicg.github.io/video-rvfc/). */
export const openVideoFrames = async (address: string, timesS: readonly number[]): Promise<FrameSource> => {
  const video = document.createElement('video');
  video.muted = true;
  video.playsInline = true;
  video.preload = 'auto';
  const loaded = happens(video, 'loadeddata');
  video.src = address;
  await loaded;
  let standing = -1;
  return {
    exact: false,
    async decode({ wanted, give }) {
      if (standing !== wanted) {
        const seeked = happens(video, 'seeked');
        const taken = takesUp(video, timesS, wanted);
        video.currentTime = middleOf(timesS, wanted);
        await seeked;
        await taken();
        standing = wanted;
      }
      give(wanted, await createImageBitmap(video));
    },
    close() {
      video.removeAttribute('src');
      video.load();
    },
  };
};
