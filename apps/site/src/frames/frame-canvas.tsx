'use client';
import { useEffect, useRef } from 'react';
import type { PictureCache } from './picture-cache.ts';

/** The part of the picture that is shown, in pixels of the picture. */
export type Part = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

type Props = {
  pictures: PictureCache | null;
  frame: number;
  /** Pixels of the canvas. */
  width: number;
  height: number;
  part?: Part;
  /** Null: a decoration, its neighbour says what it is. */
  label: string | null;
  className?: string | undefined;
  onDrawn?: (frame: number) => void;
};

/** One frame on a canvas. While the next one is decoded the last one stays; an overtaken one is never drawn. */
export function FrameCanvas(props: Props) {
  const { pictures, frame, width, height, part, label, className, onDrawn } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (pictures === null) return;
    let wanted = true;
    pictures
      .picture(frame)
      .then((picture) => {
        const context = canvas.current?.getContext('2d');
        if (!wanted || context === null || context === undefined) return;
        const {
          x,
          y,
          width: w,
          height: h,
        } = part ?? { x: 0, y: 0, width: picture.width, height: picture.height };
        context.clearRect(0, 0, width, height);
        context.drawImage(picture, x, y, w, h, 0, 0, width, height);
        context.canvas.dataset.drawn = String(frame);
        onDrawn?.(frame);
      })
      .catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [pictures, frame, width, height, part, onDrawn]);
  return (
    <canvas
      ref={canvas}
      width={width}
      height={height}
      {...(label === null ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
      className={className}
      data-frame={frame}
    />
  );
}
