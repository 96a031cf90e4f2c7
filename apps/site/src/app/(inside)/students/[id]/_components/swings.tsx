'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { TenBalls } from '../../../../../drawings/ten-balls.tsx';
import { useInstantWords } from '../../../../../times/use-instant-words.ts';
import { When } from '../../../../../times/when.tsx';
import { clubNames, painNames } from '../../../../../words/names.ts';
import { studentWords } from '../../../../../words/students.ts';
import { tallyInWords } from '../../../../../words/tally.ts';
import styles from './student.module.css';

/** What the student sent, newest first; each leads to its review. */
export function Swings({ swings }: { swings: Reply<'listSubmissions'>['items'] }) {
  const words = useInstantWords();
  return (
    <section className="stack tight ruled" aria-labelledby="swings-title">
      <h2 id="swings-title">{studentWords.swings}</h2>
      {swings.length === 0 && <p className="soft">{studentWords.noSwings}</p>}
      <ul className={styles.swings}>
        {swings.map((swing) => (
          <li key={swing.id} className={styles.swing}>
            <div className="row apart">
              <Link href={`/review/${swing.id}`} aria-label={studentWords.open(words(swing.sentAt))}>
                <When at={swing.sentAt} />
              </Link>
              <span className="small">{studentWords.statuses[swing.status]}</span>
            </div>
            <div className="row">
              <span>{clubNames[swing.club]}</span>
              <TenBalls tally={swing.tally} />
              <span className="small soft">{tallyInWords(swing.tally)}</span>
            </div>
            {swing.pain !== 'none' && <p className={styles.pain}>{painNames[swing.pain]}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
