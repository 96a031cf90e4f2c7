'use client';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './stage.module.css';
import { type Zoom, zoomSteps } from './view-part.ts';

type Props = {
  frame: number;
  timesS: readonly number[];
  zoom: Zoom;
  onStep: (by: number) => void;
  onFrame: (frame: number) => void;
  onZoom: (step: 1 | -1) => void;
};

/** Stepping by hand: one frame, ten frames, anywhere; closer and wider. */
export function StageMoves({ frame, timesS, zoom, onStep, onFrame, onZoom }: Props) {
  const last = timesS.length - 1;
  const where = reviewWords.frameOf(frame + 1, timesS.length, (timesS[frame] ?? 0).toFixed(3));
  const step = (by: number, name: string, sign: string) => (
    <button
      type="button"
      className="small-button"
      disabled={by < 0 ? frame === 0 : frame >= last}
      onClick={() => onStep(by)}
    >
      {sign}
      <span className="unseen">{name}</span>
    </button>
  );
  return (
    <>
      <input
        type="range"
        aria-label={reviewWords.slider}
        aria-valuetext={where}
        min={0}
        max={Math.max(0, last)}
        value={frame}
        onChange={(event) => onFrame(Number(event.target.value))}
      />
      <div className={styles.moves}>
        <span>
          {step(-10, reviewWords.back10, '−10')}
          {step(-1, reviewWords.back1, '−1')}
          {step(1, reviewWords.on1, '+1')}
          {step(10, reviewWords.on10, '+10')}
        </span>
        <output className="small">{where}</output>
        <span>
          <button
            type="button"
            className="small-button"
            disabled={zoom.times === 1}
            onClick={() => onZoom(-1)}
          >
            {reviewWords.wider}
          </button>
          <button
            type="button"
            className="small-button"
            disabled={zoom.times === zoomSteps.at(-1)}
            onClick={() => onZoom(1)}
          >
            {reviewWords.closer}
          </button>
        </span>
      </div>
    </>
  );
}
