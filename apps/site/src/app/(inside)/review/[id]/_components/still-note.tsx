'use client';
import { reviewWords } from '../../../../../words/review.ts';
import { stageWords } from '../../../../../words/stage.ts';

type Props = {
  moves: boolean;
  /** How many still points can be confirmed on this frame. */
  carried: number;
  canWork: boolean;
  onConfirm: () => void;
  onFilmAgain: () => void;
};

/** The still points at another moment: to be confirmed there, or not carried at all once the camera has moved. */
export function StillNote({ moves, carried, canWork, onConfirm, onFilmAgain }: Props) {
  if (moves)
    return (
      <div className="notice look stack tight">
        <p className="small">
          {stageWords.cameraMoves} {stageWords.orFilmAgain}
        </p>
        <p>
          <button type="button" className="small-button" disabled={!canWork} onClick={onFilmAgain}>
            {reviewWords.filmAgainAsk}
          </button>
        </p>
      </div>
    );
  if (carried === 0 || !canWork) return null;
  return (
    <p>
      <button type="button" className="small-button" onClick={onConfirm}>
        {stageWords.confirmStill}
      </button>
    </p>
  );
}
