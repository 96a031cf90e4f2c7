import type { FrameSource } from './frame-source.ts';
import { middleOf } from './frame-table.ts';

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

/** Frames of a video element that is stopped in the middle of each: right nearly always, and everywhere. */
export const openVideoFrames = async (address: string, timesS: readonly number[]): Promise<FrameSource> => {
  const video = document.createElement('video');
  video.muted = true;
  video.playsInline = true;
  video.preload = 'auto';
  const loaded = happens(video, 'loadeddata');
  video.src = address;
  await loaded;
  return {
    exact: false,
    async decode({ wanted, give }) {
      const seeked = happens(video, 'seeked');
      video.currentTime = middleOf(timesS, wanted);
      await seeked;
      give(wanted, await createImageBitmap(video));
    },
    close() {
      video.removeAttribute('src');
      video.load();
    },
  };
};
