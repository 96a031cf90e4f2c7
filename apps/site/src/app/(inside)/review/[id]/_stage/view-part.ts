import type { Part } from '../../../../../frames/draw-picture.ts';

export type Size = { readonly widthPx: number; readonly heightPx: number };
/** How many times as large, around which point of the picture. */
export type Zoom = { readonly times: number; readonly x: number; readonly y: number };
type Spot = { readonly x: number; readonly y: number };

export const zoomSteps = [1, 2, 4, 8] as const;
const most = 8;

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The part of the picture that is shown: `times` as large around a point, never past the edges. */
export const partOf = (size: Size, zoom: Zoom): Part => {
  const width = size.widthPx / zoom.times;
  const height = size.heightPx / zoom.times;
  return {
    x: clamp(zoom.x - width / 2, 0, size.widthPx - width),
    y: clamp(zoom.y - height / 2, 0, size.heightPx - height),
    width,
    height,
  };
};

/** One step closer or wider, to the next of one, two, four and eight times. */
export const zoomBy = (zoom: Zoom, step: 1 | -1): Zoom => {
  const steps = zoomSteps.map(Number);
  const next = step === 1 ? steps.find((one) => one > zoom.times) : steps.findLast((one) => one < zoom.times);
  return { ...zoom, times: next ?? zoom.times };
};

/** Closer or wider by a factor; the point `about` stays where it is on the screen. */
export const zoomAbout = (size: Size, zoom: Zoom, factor: number, about: Spot): Zoom => {
  const times = clamp(zoom.times * factor, 1, most);
  const part = partOf(size, zoom);
  const [cx, cy] = [part.x + part.width / 2, part.y + part.height / 2];
  const share = zoom.times / times;
  return { times, x: about.x + (cx - about.x) * share, y: about.y + (cy - about.y) * share };
};

/** The same size, so many pixels of the picture further on. */
export const panBy = (size: Size, zoom: Zoom, dx: number, dy: number): Zoom => {
  const part = partOf(size, zoom);
  const moved = partOf(size, { ...zoom, x: part.x + part.width / 2 + dx, y: part.y + part.height / 2 + dy });
  return { ...zoom, x: moved.x + moved.width / 2, y: moved.y + moved.height / 2 };
};

/** A point kept inside the picture, to a tenth of a pixel. */
export const insidePicture = (size: Size, x: number, y: number): { x: number; y: number } => ({
  x: Math.round(clamp(x, 0, size.widthPx - 1) * 10) / 10,
  y: Math.round(clamp(y, 0, size.heightPx - 1) * 10) / 10,
});
