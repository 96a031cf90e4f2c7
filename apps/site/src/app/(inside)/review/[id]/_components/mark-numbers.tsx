'use client';
import { reviewWords } from '../../../../../words/review.ts';
import type { Mark } from '../_marking/marking.ts';
import type { Size } from '../_stage/view-part.ts';
import styles from './evidence.module.css';

type Props = { mark: Mark; size: Size; frames: number; canWork: boolean; onPut: (mark: Mark) => void };

/** A mark as figures: its frame, and its place in pixels from the upper left corner. */
export function MarkNumbers({ mark, size, frames, canWork, onPut }: Props) {
  const field = (label: string, value: number, max: number, step: number, change: (to: number) => Mark) => (
    <label className="small">
      {label}
      <input
        type="number"
        inputMode="decimal"
        min={0}
        max={max}
        step={step}
        value={value}
        disabled={!canWork}
        onChange={(event) => {
          const to = event.target.valueAsNumber;
          if (Number.isFinite(to) && to >= 0 && to <= max) onPut(change(to));
        }}
      />
    </label>
  );
  return (
    <div className={styles.numbers}>
      {field(reviewWords.frame, mark.frame + 1, frames, 1, (to) => ({
        ...mark,
        frame: Math.max(0, Math.round(to) - 1),
      }))}
      {field(reviewWords.across, mark.x, size.widthPx - 1, 0.1, (x) => ({ ...mark, x }))}
      {field(reviewWords.down, mark.y, size.heightPx - 1, 0.1, (y) => ({ ...mark, y }))}
    </div>
  );
}
