'use client';
import { useEffect, useRef } from 'react';
import { drawPicture, type Part } from './draw-picture.ts';
import type { PictureCache } from './picture-cache.ts';

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
  /** A small picture that can wait. */
  patient?: boolean;
  /** How bright it is shown: a step of the stylesheet. */
  light?: number;
  onDrawn?: (frame: number) => void;
};

/** One frame on a canvas. While the next one is decoded the last one stays; an overtaken one is never drawn. */
export function FrameCanvas(props: Props) {
  const { pictures, frame, width, height, part, label, className, patient = false, light, onDrawn } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (pictures === null) return;
    let wanted = true;
    const draw = (picture: ImageBitmap) => {
      if (!wanted || canvas.current === null) return;
      drawPicture(canvas.current, picture, part);
      canvas.current.dataset.drawn = String(frame);
      onDrawn?.(frame);
    };
    const ready = pictures.ready(frame);
    if (ready !== null) draw(ready);
    else (patient ? pictures.later(frame) : pictures.picture(frame)).then(draw).catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [pictures, frame, part, patient, onDrawn]);
  return (
    <canvas
      ref={canvas}
      width={width}
      height={height}
      {...(label === null ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
      className={className}
      data-frame={frame}
      data-light={light}
    />
  );
}
