import type { Part } from '../../../../../frames/draw-picture.ts';

export type Size = { readonly widthPx: number; readonly heightPx: number };
export type Zoom = { readonly times: number; readonly x: number; readonly y: number };

export const zoomSteps = [1, 2, 4, 8] as const;

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

export const zoomBy = (zoom: Zoom, step: 1 | -1): Zoom => {
  const at = zoomSteps.map(Number).indexOf(zoom.times);
  return { ...zoom, times: zoomSteps[clamp(at + step, 0, zoomSteps.length - 1)] ?? 1 };
};

/** A point kept inside the picture, to a tenth of a pixel. */
export const insidePicture = (size: Size, x: number, y: number): { x: number; y: number } => ({
  x: Math.round(clamp(x, 0, size.widthPx - 1) * 10) / 10,
  y: Math.round(clamp(y, 0, size.heightPx - 1) * 10) / 10,
});
