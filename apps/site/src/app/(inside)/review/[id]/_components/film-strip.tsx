'use client';
import { FrameCanvas } from '../../../../../frames/frame-canvas.tsx';
import type { PictureCache } from '../../../../../frames/picture-cache.ts';
import { positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { frameOfMoment, type Mark } from '../_marking/marking.ts';
import styles from './stage.module.css';
import type { Size } from './view-part.ts';

type Props = {
  pictures: PictureCache;
  timesS: readonly number[];
  size: Size;
  frame: number;
  marks: readonly Mark[];
  positions: readonly Mark['position'][];
  onFrame: (frame: number) => void;
};

const pictures = 12;
const thumbPx = 96;

/** The clip at a glance, and under it the moments with the frame each was marked on. */
export function FilmStrip(props: Props) {
  const { timesS, size, frame, marks, positions, onFrame } = props;
  const last = timesS.length - 1;
  const frames = [
    ...new Set(Array.from({ length: pictures }, (_, at) => Math.round((at * last) / (pictures - 1)))),
  ];
  const nearest = frames.reduce((best, one) => (Math.abs(one - frame) < Math.abs(best - frame) ? one : best));
  const height = Math.round((thumbPx * size.heightPx) / size.widthPx);
  return (
    <>
      <ul className={styles.strip} aria-label={reviewWords.strip}>
        {frames.map((one) => (
          <li key={one}>
            <button
              type="button"
              aria-label={reviewWords.stripFrame((timesS[one] ?? 0).toFixed(2))}
              onClick={() => onFrame(one)}
              {...(one === nearest && { 'aria-current': 'true' as const })}
            >
              <FrameCanvas
                pictures={props.pictures}
                frame={one}
                width={thumbPx}
                height={height}
                label={null}
                className={styles.thumb}
              />
            </button>
          </li>
        ))}
      </ul>
      <ul className={styles.moments} aria-label={reviewWords.moments}>
        {positions.map((position) => {
          const at = frameOfMoment(marks, position);
          return (
            <li key={position}>
              <button type="button" disabled={at === null} onClick={() => at !== null && onFrame(at)}>
                {positionNames[position]}
                <small>{at === null ? reviewWords.momentUnset : reviewWords.momentFrame(at + 1)}</small>
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
