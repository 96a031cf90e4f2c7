'use client';
import { painNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { Submission } from './use-claim.ts';

type Props = { submission: Submission; busy: boolean; onSeen: () => void };

/** A pain report stands before everything else; it is read, never diagnosed. */
export function PainPanel({ submission, busy, onSeen }: Props) {
  if (submission.pain === 'none') return null;
  return (
    <section className="notice safety stack tight" aria-labelledby="pain-title">
      <h2 id="pain-title">{reviewWords.painTitle}</h2>
      <p>
        <strong>{painNames[submission.pain]}.</strong> {submission.painNote}
      </p>
      <p className="small">{reviewWords.painLimit}</p>
      {submission.painSeenAt === null ? (
        <p>
          <button type="button" disabled={busy} onClick={onSeen}>
            {reviewWords.painSeen}
          </button>
        </p>
      ) : (
        <p className="small">{reviewWords.painWasSeen}</p>
      )}
    </section>
  );
}
