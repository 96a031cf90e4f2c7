import { expect, it } from 'vitest';
import { measuredPicture } from './measured-picture.ts';

const picture = { widthPx: 720, heightPx: 1280, frames: 3, fps: 120, durationMs: 25 };

it('takes the true times of frames that come unevenly, and counts evenly until they are known', () => {
  expect(measuredPicture(picture, [0, 0.009, 0.016]).frameTimesS).toEqual([0, 0.009, 0.016]);
  expect(measuredPicture(picture, null).frameTimesS).toEqual([0, 1 / 120, 2 / 120]);
  // A table of another rendition.
  expect(measuredPicture(picture, [0, 0.1]).frameTimesS).toHaveLength(3);
});
