'use client';
import { useEffect, useRef } from 'react';
import { drawPicture } from '../../../../../frames/draw-picture.ts';
import type { PictureCache } from '../../../../../frames/picture-cache.ts';
import styles from './magnifier.module.css';
import type { Spot } from './use-pointer.ts';
import type { Size } from './view-part.ts';

type Props = {
  pictures: PictureCache | null;
  frame: number;
  size: Size;
  /** What lies in the middle, in pixels of the picture. */
  at: Spot;
  /** Where it is held, in pixels of the stage. */
  held: Spot;
};

/** Pixels of the canvas; the stylesheet shows it as large. */
const sidePx = 144;
/** So much of the shorter side of the picture is seen in it. */
const share = 1 / 18;
const gapPx = 28;

/** A square of the picture, enlarged, beside the pointer; the point itself lies in the gap of a cross. */
export function Magnifier({ pictures, frame, size, at, held }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const box = useRef<HTMLDivElement>(null);
  const side = Math.min(size.widthPx, size.heightPx) * share;
  useEffect(() => {
    const picture = pictures?.ready(frame) ?? null;
    const context = canvas.current?.getContext('2d');
    if (picture === null || !context || canvas.current === null) return;
    context.fillStyle = '#000';
    context.fillRect(0, 0, sidePx, sidePx);
    drawPicture(canvas.current, picture, {
      x: at.x - side / 2,
      y: at.y - side / 2,
      width: side,
      height: side,
    });
  }, [pictures, frame, at.x, at.y, side]);
  useEffect(() => {
    const element = box.current;
    const stage = element?.parentElement;
    if (!element || !stage) return;
    const left = held.x + gapPx + sidePx > stage.clientWidth ? held.x - gapPx - sidePx : held.x + gapPx;
    const top = held.y - gapPx - sidePx < 0 ? held.y + gapPx : held.y - gapPx - sidePx;
    element.style.transform = `translate(${Math.max(0, left)}px, ${Math.max(0, top)}px)`;
  }, [held.x, held.y]);
  return (
    <div ref={box} className={styles.magnifier} aria-hidden="true">
      <canvas ref={canvas} width={sidePx} height={sidePx} />
      <svg aria-hidden="true" viewBox="0 0 144 144">
        <path d="M0 72H64M80 72H144M72 0V64M72 80V144" className={styles.under} />
        <path d="M0 72H64M80 72H144M72 0V64M72 80V144" className={styles.cross} />
      </svg>
    </div>
  );
}
