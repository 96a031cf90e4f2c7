'use client';
import { useState } from 'react';
import { nextInWords } from '../../../../../words/next-evidence.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { Evidence } from '../_marking/marking.ts';
import styles from './evidence.module.css';

type Props = {
  evidence: Evidence | null;
  chosen: string | null;
  canWork: boolean;
  busy: boolean;
  onChoose: (cause: string) => void;
};
type Cause = Evidence['causes'][number];

const shownAtOnce = 5;

/** The ranked causes with what speaks for each in words; the figures are folded. */
export function CauseList({ evidence, chosen, canWork, busy, onChoose }: Props) {
  const [all, setAll] = useState(false);
  const causes = evidence?.causes ?? [];
  const line = (cause: Cause) => (
    <li key={cause.causeId} className={styles.cause} data-chosen={cause.causeId === chosen}>
      <h3>{cause.name}</h3>
      {cause.factors.length > 0 && (
        <ul className={styles.factors}>
          {cause.factors.map((factor) => (
            <li key={factor}>{factor}</li>
          ))}
        </ul>
      )}
      <div className="row apart">
        <details className="small">
          <summary>{reviewWords.figures}</summary>
          <p>
            {reviewWords.probability}: {Math.round(cause.probability * 100)} %. {reviewWords.share}:{' '}
            {Math.round(cause.share * 100)} %.
          </p>
        </details>
        {cause.causeId === chosen ? (
          <strong className={styles.chosen}>{reviewWords.chosenCause}</strong>
        ) : (
          <button
            type="button"
            className="small-button"
            disabled={!canWork || busy}
            aria-label={`${reviewWords.chooseCause}: ${cause.name}`}
            onClick={() => onChoose(cause.causeId)}
          >
            {reviewWords.chooseCause}
          </button>
        )}
      </div>
    </li>
  );
  return (
    <section className="stack tight" aria-labelledby="causes-title">
      <h2 id="causes-title">{reviewWords.causesTitle}</h2>
      {causes.length === 0 && <p className="soft">{reviewWords.noCauses}</p>}
      {evidence !== null && (
        <p className="small">
          {evidence.next === null ? reviewWords.enough : reviewWords.next(nextInWords(evidence.next))}
        </p>
      )}
      <ol className={styles.causes} aria-label={reviewWords.causesTitle}>
        {(all ? causes : causes.slice(0, shownAtOnce)).map(line)}
      </ol>
      {causes.length > shownAtOnce && !all && (
        <button type="button" className="plain" onClick={() => setAll(true)}>
          {reviewWords.alsoPossible}: {causes.length - shownAtOnce}
        </button>
      )}
    </section>
  );
}
