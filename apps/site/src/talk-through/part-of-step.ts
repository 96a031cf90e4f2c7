import type { Part } from '../frames/draw-picture.ts';
import type { TalkStep } from './record-track.ts';

type Size = { readonly widthPx: number; readonly heightPx: number };
const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The part of the picture that a step of the track shows: so many times as large around its point, never past the edges. */
export const partOfStep = ({ widthPx, heightPx }: Size, step: TalkStep | null): Part => {
  if (step === null) return { x: 0, y: 0, width: widthPx, height: heightPx };
  const [width, height] = [widthPx / step.times, heightPx / step.times];
  return {
    x: clamp(step.x - width / 2, 0, widthPx - width),
    y: clamp(step.y - height / 2, 0, heightPx - height),
    width,
    height,
  };
};
