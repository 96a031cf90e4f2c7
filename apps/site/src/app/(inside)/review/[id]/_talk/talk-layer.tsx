'use client';
import { type PointerEvent, useEffect, useRef } from 'react';
import type { Part } from '../../../../../frames/draw-picture.ts';
import { Pointing } from '../../../../../talk-through/pointing.tsx';
import type { StageView } from '../_stage/use-stage.ts';
import styles from './talk.module.css';
import type { Talk } from './use-talk.ts';

type Props = { talk: Talk; part: Part; stage: StageView };

/** Lies over the stage while a voice is recorded: the pointer points and places nothing; the wheel looks closer. */
export function TalkLayer({ talk, part, stage }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const { point, setPoint } = talk;
  const { zoomAt } = stage;
  const toPicture = (clientX: number, clientY: number) => {
    const matrix = svg.current?.getScreenCTM();
    if (!matrix) return null;
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
    return { x, y };
  };
  const show = (event: PointerEvent) => setPoint(toPicture(event.clientX, event.clientY));
  useEffect(() => {
    const element = svg.current;
    if (element === null) return;
    const wheel = (event: WheelEvent) => {
      const matrix = element.getScreenCTM();
      if (matrix === null) return;
      event.preventDefault();
      const about = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
      zoomAt(Math.exp(-event.deltaY * 0.002), about);
    };
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  }, [zoomAt]);
  return (
    <svg
      ref={svg}
      aria-hidden="true"
      viewBox={`${part.x} ${part.y} ${part.width} ${part.height}`}
      className={styles.layer}
      onPointerMove={show}
      onPointerDown={show}
      onPointerUp={(event) => event.pointerType === 'touch' && setPoint(null)}
      onPointerLeave={() => setPoint(null)}
    >
      <rect x={part.x} y={part.y} width={part.width} height={part.height} fill="transparent" />
      {point !== null && <Pointing x={point.x} y={point.y} size={part.height * 0.03} />}
    </svg>
  );
}
