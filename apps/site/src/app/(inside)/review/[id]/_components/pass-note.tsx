'use client';
import { viewNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { Pass } from '../_marking/pass-of.ts';

type Props = {
  pass: Pass;
  /** Goes to a clip of the better view; null when the student sent none. */
  onOther: (() => void) | null;
  canWork: boolean;
  onFilmAgain: () => void;
};

/** Says so where a miss is better read from the other side, and what can be done about it. */
export function PassNote({ pass, onOther, canWork, onFilmAgain }: Props) {
  if (pass.betterFrom === null) return null;
  const view = viewNames[pass.betterFrom].toLowerCase();
  return (
    <div className="notice look stack tight">
      <p className="small">
        {onOther === null ? reviewWords.wantsOtherView(view) : reviewWords.otherClipHas(view)}
      </p>
      <p>
        {onOther === null ? (
          <button type="button" className="small-button" disabled={!canWork} onClick={onFilmAgain}>
            {reviewWords.askOtherView}
          </button>
        ) : (
          <button type="button" className="small-button" onClick={onOther}>
            {reviewWords.goToClip(view)}
          </button>
        )}
      </p>
    </div>
  );
}
