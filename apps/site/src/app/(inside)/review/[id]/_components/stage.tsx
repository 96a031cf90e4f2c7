'use client';
import { type MouseEvent, useRef } from 'react';
import { Cross } from '../../../../../drawings/cross.tsx';
import type { Part } from '../../../../../frames/draw-picture.ts';
import { FrameCanvas } from '../../../../../frames/frame-canvas.tsx';
import type { PictureCache } from '../../../../../frames/picture-cache.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { keyOf, type Mark, stillPoints } from '../_marking/marking.ts';
import styles from './stage.module.css';
import type { Size } from './view-part.ts';

type Props = {
  pictures: PictureCache | null;
  size: Size;
  frame: number;
  part: Part;
  marks: readonly Mark[];
  selected: string | null;
  /** What the next click places, in words; null when clicks place nothing. */
  asks: string | null;
  onPlace: (x: number, y: number) => void;
  onDrawn: (frame: number) => void;
};

const trailSide = (mark: Mark): boolean => mark.point.startsWith('trail');

/** The dark stage: one exact frame with the marks of its moment and the still points of address. */
export function Stage({ pictures, size, frame, part, marks, selected, asks, onPlace, onDrawn }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const shown = marks.filter(
    (mark) => mark.frame === frame || (mark.position === 'address' && stillPoints.includes(mark.point)),
  );
  const place = (event: MouseEvent) => {
    const matrix = svg.current?.getScreenCTM();
    if (asks === null || matrix === null || matrix === undefined) return;
    // A press by keyboard has no place of its own: the middle of what is shown.
    if (event.detail === 0) return onPlace(part.x + part.width / 2, part.y + part.height / 2);
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    if (at.x < 0 || at.y < 0 || at.x >= size.widthPx || at.y >= size.heightPx) return;
    onPlace(at.x, at.y);
  };
  const middle = shown.reduce((sum, mark) => sum + mark.x, 0) / Math.max(1, shown.length);
  const placed = shown.map((mark) => `${pointNames[mark.point]}, ${positionNames[mark.position]}`);
  const spoken = placed.length === 0 ? reviewWords.noMarksHere : placed.join('; ');
  const viewBox = `${part.x} ${part.y} ${part.width} ${part.height}`;
  const arm = part.height * 0.022;
  return (
    <div className={styles.frame}>
      <button
        type="button"
        aria-label={`${reviewWords.stage}${asks === null ? '' : `: ${asks}`}`}
        aria-describedby="stage-help"
        className={asks === null ? styles.stage : styles.aiming}
        onClick={place}
      >
        <FrameCanvas
          pictures={pictures}
          frame={frame}
          width={size.widthPx}
          height={size.heightPx}
          part={part}
          label={null}
          className={styles.picture}
          onDrawn={onDrawn}
        />
        <svg ref={svg} aria-hidden="true" viewBox={viewBox} className={styles.overlay} />
      </button>
      <svg role="img" aria-label={spoken} viewBox={viewBox} className={styles.overlay}>
        {shown.map((mark) => (
          <Cross
            key={keyOf(mark)}
            x={mark.x}
            y={mark.y}
            arm={arm}
            trail={trailSide(mark)}
            hollow={mark.source !== 'coach' || mark.frame !== frame}
            selected={keyOf(mark) === selected}
            side={mark.x < middle ? 'left' : 'right'}
            label={pointNames[mark.point]}
          />
        ))}
      </svg>
      {asks !== null && (
        <p className={styles.asks} aria-hidden="true">
          {asks}
        </p>
      )}
    </div>
  );
}
