'use client';
import { useState } from 'react';
import { When } from '../times/when.tsx';
import { aboutWords } from '../words/about.ts';
import styles from './about-student.module.css';
import { lineOf } from './line-of.tsx';
import type { About } from './use-about.ts';

const shownAtFirst = 12;

/** What happened, the newest first: the day, what it was, and how it went. */
export function Timeline({ about }: { about: About }) {
  const { timeline, older, student } = about;
  const [all, setAll] = useState(false);
  const shown = all ? timeline : timeline.slice(0, shownAtFirst);
  return (
    <div className="stack tight">
      <h3>{aboutWords.timeline}</h3>
      {timeline.length === 0 && <p className="soft">{aboutWords.timelineEmpty}</p>}
      <ol className={styles.timeline}>
        {shown.map((item) => (
          <li key={`${item.kind} ${item.id}`} className={styles.item}>
            <span className="small soft">
              <When at={item.at} as="day" />
            </span>
            <span className={styles.kind}>{aboutWords.kinds[item.kind]}</span>
            <span>{lineOf(item, student.units)}</span>
          </li>
        ))}
      </ol>
      {!all && timeline.length > shownAtFirst && (
        <p>
          <button type="button" className="small-button" onClick={() => setAll(true)}>
            {aboutWords.showAll(timeline.length)}
          </button>
        </p>
      )}
      {older && (all || timeline.length <= shownAtFirst) && <p className="small soft">{aboutWords.older}</p>}
    </div>
  );
}
