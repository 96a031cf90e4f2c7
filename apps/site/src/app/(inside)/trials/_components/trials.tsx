'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useEffect, useRef, useState } from 'react';
import { trialsWords } from '../../../../words/trials.ts';
import { TrialRow } from './trial-row.tsx';
import styles from './trials.module.css';

type Trial = Reply<'readTrials'>['items'][number];

/** The open trials; one that was set to paid leaves the list and is told in words. */
export function Trials({ first }: { first: readonly Trial[] }) {
  const [paid, setPaid] = useState<readonly Trial['student'][]>([]);
  const told = useRef<HTMLParagraphElement>(null);
  const open = first.filter(({ student }) => !paid.some(({ id }) => id === student.id));
  const last = paid.at(-1);
  useEffect(() => {
    if (last !== undefined) told.current?.focus();
  }, [last]);
  return (
    <section className="stack tight" aria-labelledby="open-title">
      <h2 id="open-title">
        {trialsWords.openTitle} <span className="soft">{open.length}</span>
      </h2>
      <p ref={told} role="status" tabIndex={-1} className={last === undefined ? 'unseen' : 'notice good'}>
        {last !== undefined && trialsWords.done(last.name)}
      </p>
      {open.length === 0 ? (
        <div className="stack tight">
          <h3>{trialsWords.emptyTitle}</h3>
          <p>{trialsWords.empty}</p>
        </div>
      ) : (
        <ul className={styles.trials}>
          {open.map((trial) => (
            <TrialRow
              key={trial.student.id}
              trial={trial}
              onPaid={() => setPaid((now) => [...now, trial.student])}
            />
          ))}
        </ul>
      )}
    </section>
  );
}
