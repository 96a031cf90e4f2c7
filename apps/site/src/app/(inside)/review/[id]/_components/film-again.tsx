'use client';
import { useEffect, useRef, useState } from 'react';
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
/** A reason that was named elsewhere on the screen; `at` counts the times. */
export type Offered = { readonly reason: FilmAgainReason; readonly at: number };
type Props = {
  canWork: boolean;
  busy: boolean;
  offered: Offered | null;
  onAsk: (reason: FilmAgainReason) => void;
};

/** The third way out beside reply and release: a reason and the asking, two taps. */
export function FilmAgain({ canWork, busy, offered, onAsk }: Props) {
  const [reason, setReason] = useState<FilmAgainReason | null>(null);
  const details = useRef<HTMLDetailsElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (offered === null || details.current === null) return;
    setReason(offered.reason);
    details.current.open = true;
    details.current.scrollIntoView({ block: 'center' });
  }, [offered]);
  useEffect(() => {
    if (offered !== null && reason === offered.reason) button.current?.focus();
  }, [offered, reason]);
  return (
    <details ref={details} className="ruled" open={canWork}>
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
          <button
            ref={button}
            type="button"
            disabled={reason === null}
            onClick={() => reason !== null && onAsk(reason)}
          >
            {reviewWords.filmAgainAsk}
          </button>
        </p>
      </fieldset>
    </details>
  );
}
