'use client';
import { useRef } from 'react';
import styles from './look.module.css';

type Props = {
  /** Share of the width from the left, 0..1. */
  at: number;
  onMove: (at: number) => void;
};

/** One upright line over the film, dragged by thumb; the slider beneath moves it by key. */
export function BallLine({ at, onMove }: Props) {
  const sheet = useRef<SVGSVGElement>(null);
  const drag = (event: React.PointerEvent<SVGSVGElement>) => {
    if (event.buttons === 0) return;
    const box = sheet.current?.getBoundingClientRect();
    if (box === undefined) return;
    onMove(Math.min(1, Math.max(0, (event.clientX - box.left) / box.width)));
  };
  return (
    <svg
      ref={sheet}
      aria-hidden="true"
      viewBox="0 0 1000 1000"
      preserveAspectRatio="none"
      className={styles.sheet}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        drag(event);
      }}
      onPointerMove={drag}
    >
      <path d={`M${at * 1000} 0V1000`} className={styles.lineHalo} />
      <path d={`M${at * 1000} 0V1000`} className={styles.line} />
    </svg>
  );
}
