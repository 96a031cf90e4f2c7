'use client';
import { useMemo } from 'react';
import { FrameCanvas } from '../../../../../frames/frame-canvas.tsx';
import { compareWords } from '../../../../../words/compare.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { Mark } from '../_marking/marking.ts';
import { Lines } from '../_stage/lines.tsx';
import { type LineKind, overlayLines } from '../_stage/overlay-lines.ts';
import stage from '../_stage/stage.module.css';
import type { StageView } from '../_stage/use-stage.ts';
import type { Size } from '../_stage/view-part.ts';
import type { Comparable } from './choices-of.ts';
import styles from './compare.module.css';
import { mirroredLine, partBeside } from './mirrored.ts';
import { frameBeside } from './tie-frames.ts';
import type { CompareHere } from './use-compare.ts';

type Props = {
  compare: CompareHere;
  other: Comparable;
  size: Size;
  here: { readonly timesS: readonly number[]; readonly size: Size };
  stage: StageView;
  moment: Mark['position'] | null;
  hidden: ReadonlySet<LineKind>;
};

/** The other swing at the same moment: it follows every step, look closer and brightness of the stage. */
export function ComparePane(props: Props) {
  const { other, size, here, moment, hidden } = props;
  const { ties, byHand, mirror, opening } = props.compare;
  const { frame: ownFrame, zoom, light } = props.stage;
  const open = opening.kind === 'open' ? opening.clip : null;
  const frame = open === null ? 0 : frameBeside(ownFrame, here.timesS, open.timesS, ties, byHand);
  const { seen, drawn } = useMemo(
    () => partBeside(here.size, zoom, size, mirror),
    [here.size, zoom, size, mirror],
  );
  const lines = overlayLines(other.marks, other.clip.view, moment, size)
    .filter(({ kind }) => !hidden.has(kind))
    .map((line) => (mirror ? mirroredLine(line, size) : line));
  const where = reviewWords.frameOf(
    frame + 1,
    open?.timesS.length ?? 0,
    (open?.timesS[frame] ?? 0).toFixed(3),
  );
  return (
    <div className={`${stage.frame} ${styles.pane}`} data-mirror={mirror}>
      {open !== null && (
        <FrameCanvas
          pictures={open.pictures}
          frame={frame}
          width={size.widthPx}
          height={size.heightPx}
          part={drawn}
          label={compareWords.picture(where, mirror)}
          className={`${stage.picture} ${mirror ? styles.mirror : ''}`}
          light={light}
        />
      )}
      <svg
        aria-hidden="true"
        viewBox={`${seen.x} ${seen.y} ${seen.width} ${seen.height}`}
        className={stage.overlay}
      >
        <Lines lines={lines} tick={seen.height * 0.022} />
      </svg>
      <p className={styles.where}>
        {opening.kind === 'opening' && compareWords.opening}
        {opening.kind === 'failed' && compareWords.failed}
        {open !== null && where}
      </p>
    </div>
  );
}
