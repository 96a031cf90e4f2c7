// Runs in the browser: steps through the numbered clip with the very code of the review screen.
import { openDecodedFrames } from '../../../apps/site/src/frames/decoded-frames.ts';
import { drawPicture } from '../../../apps/site/src/frames/draw-picture.ts';
import { readFrameTable } from '../../../apps/site/src/frames/frame-table.ts';
import { lookAhead } from '../../../apps/site/src/frames/look-ahead.ts';
import { cachePictures, type PictureCache } from '../../../apps/site/src/frames/picture-cache.ts';
import { openVideoFrames } from '../../../apps/site/src/frames/video-frames.ts';
import { bits, leftPx, numberIn, squarePx, topPx } from './number-in-picture.ts';

export type Stepped = {
  wrong: number;
  looked: number;
  forwardMs: number[];
  backwardMs: number[];
  /** By the video element, where a browser decodes no single frames. */
  byVideo: { wrong: number; looked: number };
};

/** Frames between two misses on the way back: more than the ten of a run. */
const leapFrames = 11;

const canvas = document.createElement('canvas');
canvas.width = 720;
canvas.height = 1280;

const shown = (): number | null => {
  const width = bits * squarePx;
  const pixels = canvas.getContext('2d')?.getImageData(leftPx, topPx, width, squarePx).data;
  return pixels === undefined ? null : numberIn(pixels, width);
};
const rest = (): Promise<unknown> => new Promise((next) => requestAnimationFrame(next));

/** Draws a frame as the stage does, and says how long that took. */
const step = async (pictures: PictureCache, frame: number): Promise<number> => {
  const begun = performance.now();
  drawPicture(canvas, pictures.ready(frame) ?? (await pictures.picture(frame)));
  return performance.now() - begun;
};

const run = async (): Promise<Stepped> => {
  const { timesS } = await readFrameTable('/frames.json', new AbortController().signal);
  const open = async (): Promise<PictureCache> => {
    const source = await openDecodedFrames('/rendition.mp4', timesS);
    if (source === null) throw new Error('This browser does not decode the clip.');
    return cachePictures(source);
  };
  const byVideo = { wrong: 0, looked: 0 };
  const told: Stepped = { wrong: 0, looked: 0, forwardMs: [], backwardMs: [], byVideo };
  const look = (frame: number) => {
    told.looked += 1;
    if (shown() !== frame) told.wrong += 1;
  };

  // Every frame once, far from the one before.
  const anywhere = await open();
  for (let at = 0; at < timesS.length; at += 1) {
    const frame = (at * 97) % timesS.length;
    await step(anywhere, frame);
    look(frame);
  }
  anywhere.close();

  // Forward, as an arrow key held down repeats: about thirty a second.
  const onward = await open();
  await step(onward, 0);
  for (let frame = 1; frame < timesS.length; frame += 1) {
    lookAhead(onward, frame - 1, 1, timesS.length);
    await rest();
    await rest();
    told.forwardMs.push(await step(onward, frame));
    look(frame);
  }
  onward.close();

  // Backward, each time to a run that was not decoded yet.
  for (let from = 0; from < leapFrames; from += 1) {
    const back = await open();
    await step(back, timesS.length - 1);
    for (let frame = timesS.length - 1 - leapFrames - from; frame >= 0; frame -= leapFrames) {
      await rest();
      told.backwardMs.push(await step(back, frame));
      look(frame);
    }
    back.close();
  }

  // The fallback, at every frame out of order.
  const video = cachePictures(await openVideoFrames('/rendition.mp4', timesS));
  for (let at = 0; at < timesS.length; at += 1) {
    const frame = (at * 97) % timesS.length;
    await step(video, frame);
    byVideo.looked += 1;
    if (shown() !== frame) byVideo.wrong += 1;
  }
  video.close();
  return told;
};

Object.assign(window, { run });
