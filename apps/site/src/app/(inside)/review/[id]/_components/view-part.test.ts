import { expect, it } from 'vitest';
import { insidePicture, partOf, zoomBy } from './view-part.ts';

const size = { widthPx: 720, heightPx: 1280 };

it('shows a part around a point and stops at the edges', () => {
  expect(partOf(size, { times: 1, x: 9, y: 9 })).toEqual({ x: 0, y: 0, width: 720, height: 1280 });
  expect(partOf(size, { times: 2, x: 360, y: 640 })).toEqual({ x: 180, y: 320, width: 360, height: 640 });
  expect(partOf(size, { times: 4, x: 0, y: 1280 })).toEqual({ x: 0, y: 960, width: 180, height: 320 });
});

it('changes the size by steps from one to eight', () => {
  const one = { times: 1, x: 0, y: 0 };
  expect(zoomBy(one, -1).times).toBe(1);
  expect(zoomBy(zoomBy(zoomBy(zoomBy(one, 1), 1), 1), 1).times).toBe(8);
});

it('keeps a nudged mark in the picture', () => {
  expect(insidePicture(size, -3, 1300)).toEqual({ x: 0, y: 1279 });
  expect(insidePicture(size, 10.26, 20)).toEqual({ x: 10.3, y: 20 });
});
