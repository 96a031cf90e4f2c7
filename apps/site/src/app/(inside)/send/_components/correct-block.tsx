'use client';
import { useState } from 'react';
import { sendWords } from '../../../../words/send.ts';
import { CorrectForm } from './correct-form.tsx';
import type { Submission } from './use-submission.ts';

type Props = {
  submission: Submission;
  onSaved: (submission: Submission) => void;
  onStale: () => Promise<void>;
};

/** What can be put right after sending, behind one button. */
export function CorrectBlock({ submission, onSaved, onStale }: Props) {
  const [open, setOpen] = useState(false);
  const [saved, setSaved] = useState(false);
  const done = (next: Submission) => {
    onSaved(next);
    setOpen(false);
    setSaved(true);
  };
  return (
    <section className="stack ruled" aria-labelledby="correct-title">
      <h2 id="correct-title">{sendWords.correctTitle}</h2>
      <p className="hint">{sendWords.correctHint}</p>
      <p role="status">{saved && !open && sendWords.corrected}</p>
      {open ? (
        <CorrectForm submission={submission} onSaved={done} onStale={onStale} />
      ) : (
        <p>
          <button type="button" onClick={() => setOpen(true)}>
            {sendWords.correctOpen}
          </button>
        </p>
      )}
    </section>
  );
}
