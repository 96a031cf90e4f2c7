'use client';
import { inboxWords } from '../../../../words/inbox.ts';
import styles from './inbox.module.css';
import type { Close } from './use-inbox.ts';

const outcomes = ['spoke', 'wrote', 'no-need'] as const;

/** What was done about a concern: it leaves the inbox with it. */
export function CloseConcern({ onClose }: { onClose: (outcome: Close) => void }) {
  return (
    <fieldset className={styles.outcomes}>
      <legend>{inboxWords.closeTitle}</legend>
      <div className="row">
        {outcomes.map((outcome) => (
          <button key={outcome} type="button" className="small-button" onClick={() => onClose(outcome)}>
            {inboxWords.outcomes[outcome]}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
