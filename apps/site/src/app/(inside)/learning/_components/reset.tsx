'use client';
import { useState } from 'react';
import { learningWords } from '../../../../words/learning.ts';

type Props = { swings: number; busy: boolean; onReset: () => Promise<boolean> };

/** Begins anew, after one question. */
export function Reset({ swings, busy, onReset }: Props) {
  const [state, setState] = useState<'still' | 'asking' | 'done'>('still');
  return (
    <section className="stack tight ruled" aria-labelledby="reset-title">
      <h2 id="reset-title">{learningWords.resetTitle}</h2>
      <p>{learningWords.resetLead}</p>
      {state === 'asking' ? (
        <div className="notice look stack tight" role="alert">
          <p>{learningWords.resetSure(swings)}</p>
          <div className="row">
            <button type="button" onClick={() => setState('still')}>
              {learningWords.resetNo}
            </button>
            <button
              type="button"
              disabled={busy}
              onClick={async () => {
                if (await onReset()) setState('done');
              }}
            >
              {learningWords.resetYes}
            </button>
          </div>
        </div>
      ) : (
        <p className="row">
          <button
            type="button"
            className="small-button"
            disabled={busy || swings === 0}
            onClick={() => setState('asking')}
          >
            {learningWords.reset}
          </button>
          <span role="status" className="small soft">
            {state === 'done' && swings === 0 ? learningWords.resetDone : ''}
          </span>
        </p>
      )}
    </section>
  );
}
