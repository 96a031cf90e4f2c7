'use client';
import { FrameCanvas } from '../../../../../frames/frame-canvas.tsx';
import type { PictureCache } from '../../../../../frames/picture-cache.ts';
import { positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { frameOfMoment, type Mark } from '../_marking/marking.ts';
import styles from './film-strip.module.css';
import type { Size } from './view-part.ts';

type Props = {
  pictures: PictureCache;
  size: Size;
  frame: number;
  marks: readonly Mark[];
  positions: readonly Mark['position'][];
  /** The moment that is being looked for. */
  sought: Mark['position'] | null;
  onFrame: (frame: number) => void;
};

const thumbPx = 96;

/** The key moments as a strip of film: each with the frame it was marked on, empty until it has one. */
export function FilmStrip(props: Props) {
  const { pictures, size, frame, marks, positions, sought, onFrame } = props;
  const height = Math.round((thumbPx * size.heightPx) / size.widthPx);
  return (
    <ul className={styles.strip} aria-label={reviewWords.moments}>
      {positions.map((position) => {
        const at = frameOfMoment(marks, position);
        return (
          <li key={position}>
            <button
              type="button"
              disabled={at === null}
              onClick={() => at !== null && onFrame(at)}
              data-sought={position === sought}
              {...(at === frame && { 'aria-current': 'true' as const })}
            >
              {at === null ? (
                <span className={styles.empty} />
              ) : (
                <FrameCanvas
                  patient
                  pictures={pictures}
                  frame={at}
                  width={thumbPx}
                  height={height}
                  label={null}
                  className={styles.thumb}
                />
              )}
              <span className={styles.words}>
                {positionNames[position]}
                <small>{at === null ? reviewWords.momentUnset : reviewWords.momentFrame(at + 1)}</small>
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
