'use client';
import { useState } from 'react';
import { captionText } from '../../../../../talk-through/captions-from.ts';
import { talkWords } from '../../../../../words/talk.ts';
import styles from './talk.module.css';
import type { Talk } from './use-talk.ts';

/** What is said, in words: typed or left out. */
export function CaptionsForm({ talk }: { talk: Talk }) {
  const [text, setText] = useState(() => captionText(talk.stored?.captions ?? []));
  const [kept, setKept] = useState(false);
  return (
    <details className={styles.captions}>
      <summary>{talkWords.captionsTitle}</summary>
      <form
        className="stack tight"
        onSubmit={(event) => {
          event.preventDefault();
          talk.caption(text).then(setKept);
        }}
      >
        <label className={styles.field}>
          <span>{talkWords.captionsLead}</span>
          <textarea
            rows={4}
            value={text}
            maxLength={8000}
            onChange={(event) => {
              setText(event.target.value);
              setKept(false);
            }}
          />
        </label>
        <p className="row">
          <button type="submit" className="small-button" disabled={talk.sending.busy}>
            {talkWords.keepCaptions}
          </button>
          <span role="status">{kept ? talkWords.captionsKept : ''}</span>
        </p>
      </form>
    </details>
  );
}
