'use client';
import { useState } from 'react';
import { FilmAgainDrawing } from '../../../../../drawings/film-again-drawing.tsx';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './film-again.module.css';
import type { FilmAgainReason } from './use-claim.ts';

const reasons = [
  'club-out-of-picture',
  'too-dark',
  'camera-moves',
  'wrong-angle',
  'cut-short',
  'too-far',
] as const;
type Props = { canWork: boolean; busy: boolean; onAsk: (reason: FilmAgainReason) => void };

/** The third way out beside reply and release: a reason and the asking, two taps. */
export function FilmAgain({ canWork, busy, onAsk }: Props) {
  const [reason, setReason] = useState<FilmAgainReason | null>(null);
  return (
    <details className="ruled">
      <summary>{reviewWords.filmAgainTitle}</summary>
      <fieldset className="stack" disabled={!canWork || busy}>
        <legend className="hint">{reviewWords.filmAgainLead}</legend>
        <div className={styles.reasons}>
          {reasons.map((one) => (
            <label key={one} className="choice">
              <input
                type="radio"
                name="film-again"
                checked={reason === one}
                onChange={() => setReason(one)}
              />
              <FilmAgainDrawing reason={one} />
              {reviewWords.filmAgain[one]}
            </label>
          ))}
        </div>
        <p>
          <button type="button" disabled={reason === null} onClick={() => reason !== null && onAsk(reason)}>
            {reviewWords.filmAgainAsk}
          </button>
        </p>
      </fieldset>
    </details>
  );
}
