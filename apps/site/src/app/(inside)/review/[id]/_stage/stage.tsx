'use client';
import type { ClubheadPixel } from '@ballfirst/swing/arc/clubhead-track';
import { type MouseEvent, useEffect, useRef } from 'react';
import { Cross } from '../../../../../drawings/cross.tsx';
import type { Part } from '../../../../../frames/draw-picture.ts';
import { FrameCanvas } from '../../../../../frames/frame-canvas.tsx';
import { lookAhead } from '../../../../../frames/look-ahead.ts';
import type { PictureCache } from '../../../../../frames/picture-cache.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { keyOf, type Mark } from '../_marking/marking.ts';
import { Lines } from './lines.tsx';
import { Magnifier } from './magnifier.tsx';
import type { OverlayLine } from './overlay-lines.ts';
import styles from './stage.module.css';
import { TrailLine } from './trail-line.tsx';
import type { Asking } from './use-pass.ts';
import { type Spot, usePointer } from './use-pointer.ts';
import type { StageView } from './use-stage.ts';
import type { Size } from './view-part.ts';

type Props = {
  pictures: PictureCache | null;
  size: Size;
  stage: StageView;
  part: Part;
  /** Marks of this frame, and the still points carried over to it. */
  shown: readonly Mark[];
  lines: readonly OverlayLine[];
  /** The clubhead over frames. */
  trail: readonly ClubheadPixel[];
  asking: Asking;
  /** What the next click places, in words; null when clicks place nothing. */
  asks: string | null;
  canWork: boolean;
};

/** Closer to a mark than this share of the height that is shown, a press takes hold of it. */
const hitShare = 0.024;

/** The dark stage: one exact frame with its marks, lines, and what is aimed at. */
export function Stage(props: Props) {
  const { pictures, size, stage, part, shown, lines, trail, asking, asks, canWork } = props;
  const button = useRef<HTMLButtonElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const { frame, drawn, zoom, towards, last } = stage;
  const seen = drawn === frame;
  const nearest = (at: Spot): Mark | null => {
    const far = ({ x, y }: Spot) => Math.hypot(x - at.x, y - at.y);
    const best = [...shown].sort((a, b) => far(a) - far(b))[0];
    return best !== undefined && far(best) < part.height * hitShare ? best : null;
  };
  const matrix = () => svg.current?.getScreenCTM() ?? null;
  const pointer = usePointer(button, {
    toPicture: (at) => {
      const through = matrix();
      return through === null ? null : new DOMPoint(at.x, at.y).matrixTransform(through.inverse());
    },
    hits: (at) => canWork && seen && nearest(at) !== null,
    canPlace: asks !== null && seen,
    zoomed: zoom.times > 1,
    tap: (at) => {
      if (!canWork || !seen) return;
      const there = nearest(at);
      if (asks === null && there !== null && there.source === 'coach') return asking.choose(there);
      if (at.x < 0 || at.y < 0 || at.x >= size.widthPx || at.y >= size.heightPx) return;
      asking.place(frame, at);
    },
    grab: (at) => {
      const mark = nearest(at);
      if (mark !== null) asking.grab(mark);
    },
    drag: asking.drag,
    drop: asking.drop,
    pan: stage.pan,
    zoomAt: stage.zoomAt,
  });
  useEffect(() => {
    if (pictures === null || drawn < 0) return;
    lookAhead(pictures, drawn, towards, last + 1);
  }, [pictures, drawn, towards, last]);

  const pressed = (event: MouseEvent) => {
    // A press by keyboard: there is no place to it yet, so the aim begins.
    if (event.detail === 0 && !asking.aiming) asking.startAim();
  };
  const middle = shown.reduce((sum, mark) => sum + mark.x, 0) / Math.max(1, shown.length);
  const placed = shown.map((mark) => `${pointNames[mark.point]}, ${positionNames[mark.position]}`);
  const spoken = placed.length === 0 ? reviewWords.noMarksHere : placed.join('; ');
  const viewBox = `${part.x} ${part.y} ${part.width} ${part.height}`;
  const arm = part.height * 0.022;
  const heldMark = shown.find((mark) => asking.held !== null && keyOf(mark) === keyOf(asking.held));
  const aimed = asking.aim ?? heldMark ?? null;
  const onStage = (at: Spot): Spot | null => {
    const box = button.current?.getBoundingClientRect();
    const through = matrix();
    if (box === undefined || through === null) return null;
    const screen = new DOMPoint(at.x, at.y).matrixTransform(through);
    return { x: screen.x - box.left, y: screen.y - box.top };
  };
  const box = button.current?.getBoundingClientRect();
  const over = pointer.over;
  const glass =
    over !== null && box !== undefined
      ? { at: over.picture, held: { x: over.screen.x - box.left, y: over.screen.y - box.top } }
      : aimed !== null
        ? { at: aimed, held: onStage(aimed) }
        : null;
  return (
    <div className={styles.frame}>
      <button
        ref={button}
        type="button"
        aria-label={`${reviewWords.stage}${asks === null ? '' : `: ${asks}`}`}
        aria-describedby="stage-help"
        data-stage
        className={asks === null ? styles.stage : styles.aiming}
        onClick={pressed}
        onPointerDown={pointer.onPointerDown}
        onPointerMove={pointer.onPointerMove}
        onPointerUp={pointer.onPointerUp}
        onPointerCancel={pointer.onPointerCancel}
        onPointerLeave={pointer.onPointerLeave}
      >
        <FrameCanvas
          pictures={pictures}
          frame={frame}
          width={size.widthPx}
          height={size.heightPx}
          part={part}
          label={null}
          className={styles.picture}
          light={stage.light}
          onDrawn={stage.setDrawn}
        />
        <svg ref={svg} aria-hidden="true" viewBox={viewBox} className={styles.overlay} />
      </button>
      <svg role="img" aria-label={spoken} viewBox={viewBox} className={styles.overlay}>
        <Lines lines={lines} tick={arm} />
        <TrailLine trail={trail} frame={frame} dot={arm * 0.14} />
        {shown.map((mark) => (
          <Cross
            key={`${keyOf(mark)} ${mark.source}`}
            x={mark.x}
            y={mark.y}
            arm={arm}
            trail={mark.point.startsWith('trail')}
            hollow={mark.source !== 'coach'}
            selected={asking.selected !== null && keyOf(mark) === keyOf(asking.selected)}
            side={mark.x < middle ? 'left' : 'right'}
            label={pointNames[mark.point]}
          />
        ))}
        {asking.aim !== null && asking.target !== null && (
          <Cross
            x={asking.aim.x}
            y={asking.aim.y}
            arm={arm * 1.5}
            selected
            hollow
            side="right"
            label={pointNames[asking.target.point]}
          />
        )}
      </svg>
      {glass !== null && glass.held !== null && zoom.times < 4 && (
        <Magnifier pictures={pictures} frame={frame} size={size} at={glass.at} held={glass.held} />
      )}
      {asks !== null && (
        <p className={styles.asks} aria-hidden="true">
          {asks}
        </p>
      )}
    </div>
  );
}
