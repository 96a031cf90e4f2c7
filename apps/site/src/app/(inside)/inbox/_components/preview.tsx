'use client';
import Link from 'next/link';
import { TenBalls } from '../../../../drawings/ten-balls.tsx';
import { inboxWords } from '../../../../words/inbox.ts';
import { painNames } from '../../../../words/names.ts';
import { tallyInWords } from '../../../../words/tally.ts';
import styles from './inbox.module.css';
import type { Item } from './use-inbox.ts';

/** Beside the list on a wide screen: the picture and the note of the selected swing. */
export function Preview({ item }: { item: Item }) {
  return (
    <section className={styles.preview} aria-label={inboxWords.preview}>
      <h2>{item.student.name}</h2>
      {item.poster === null ? (
        <p className="soft">{inboxWords.noPoster}</p>
      ) : (
        <picture>
          <img src={item.poster} alt={inboxWords.poster(item.student.name)} className={styles.poster} />
        </picture>
      )}
      <div>
        <TenBalls tally={item.tally} />
        <p className="small">{tallyInWords(item.tally)}</p>
      </div>
      {item.pain !== 'none' && <p className="notice safety">{painNames[item.pain]}</p>}
      <p>{item.note === '' ? <span className="soft">{inboxWords.noNote}</span> : item.note}</p>
      <Link
        href={`/review/${item.id}`}
        className="button main"
        aria-label={inboxWords.openFor(item.student.name)}
      >
        {inboxWords.open}
      </Link>
    </section>
  );
}
