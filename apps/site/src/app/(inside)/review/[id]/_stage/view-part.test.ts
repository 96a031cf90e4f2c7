import { expect, it } from 'vitest';
import { insidePicture, panBy, partOf, zoomAbout, zoomBy } from './view-part.ts';

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
  expect([zoomBy({ ...one, times: 2.7 }, 1).times, zoomBy({ ...one, times: 2.7 }, -1).times]).toEqual([4, 2]);
});

it('leaves the point it is aimed at where it is', () => {
  const about = { x: 200, y: 900 };
  const before = { times: 2, x: 300, y: 800 };
  const share = (zoom: typeof before) => {
    const part = partOf(size, zoom);
    return [(about.x - part.x) / part.width, (about.y - part.y) / part.height];
  };
  const after = zoomAbout(size, before, 1.6, about);
  expect(after.times).toBeCloseTo(3.2);
  share(after).forEach((at, axis) => {
    expect(at).toBeCloseTo(share(before)[axis] ?? Number.NaN);
  });
  expect(zoomAbout(size, before, 100, about).times).toBe(8);
  expect(zoomAbout(size, before, 0.01, about).times).toBe(1);
});

it('pans to the edge and no further, so that the way back begins at once', () => {
  const far = panBy(size, { times: 2, x: 360, y: 640 }, 5000, -5000);
  expect(partOf(size, far)).toMatchObject({ x: 360, y: 0 });
  expect(partOf(size, panBy(size, far, -10, 10))).toMatchObject({ x: 350, y: 10 });
});

it('keeps a nudged mark in the picture', () => {
  expect(insidePicture(size, -3, 1300)).toEqual({ x: 0, y: 1279 });
  expect(insidePicture(size, 10.26, 20)).toEqual({ x: 10.3, y: 20 });
});
