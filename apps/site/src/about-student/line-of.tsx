import { causes } from '@ballfirst/library/causes';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { When } from '../times/when.tsx';
import { localDayInWords } from '../weeks/local-day.ts';
import { aboutWords } from '../words/about.ts';
import { lineTestWords, placeInWords } from '../words/line-test.ts';
import {
  clubNames,
  outcomeNames,
  painNames,
  rungNames,
  spelt,
  standingNames,
  standingReason,
  verdictNames,
} from '../words/names.ts';
import { studentWords } from '../words/students.ts';
import styles from './about-student.module.css';
import type { About } from './use-about.ts';

type Item = About['timeline'][number];

const causeName = (id: string): string => causes.find((cause) => cause.id === id)?.name ?? spelt(id);
const rungName = (rung: string): string => (rungNames[rung] ?? spelt(rung)).toLowerCase();

const pain = (told: 'none' | 'new' | 'worse'): ReactNode =>
  told === 'none' ? null : <strong className={styles.pain}> {painNames[told]}.</strong>;
/** Opened or not, and when the student said to have read it. */
const readOf = ({ read, saidReadAt }: Extract<Item, { kind: 'reply' }>): ReactNode =>
  saidReadAt === null ? (
    read ? (
      aboutWords.opened
    ) : (
      aboutWords.unopened
    )
  ) : (
    <>
      {aboutWords.saidRead} <When at={saidReadAt} />
    </>
  );
const said = (words: string): ReactNode => (words === '' ? null : <span className="soft"> “{words}”</span>);

/** One thing that happened, in a line. */
export const lineOf = (item: Item, units: 'metric' | 'imperial'): ReactNode => {
  switch (item.kind) {
    case 'standing':
      return `${standingNames[item.to]}${item.reason === '' ? '' : `, ${standingReason(item.reason)}`}`;
    case 'swing':
      return (
        <>
          <Link href={`/review/${item.id}`}>{clubNames[item.club]}</Link>
          {item.fault !== null && `, ${outcomeNames[item.fault].toLowerCase()}`},{' '}
          {studentWords.statuses[item.status].toLowerCase()}.{pain(item.pain)}
          {said(item.words)}
        </>
      );
    case 'reply':
      return (
        <>
          <Link href={`/replies/${item.id}`}>
            {item.cause === null ? aboutWords.noCause : causeName(item.cause)}
          </Link>
          , {aboutWords.noteBy(item.by)} {readOf(item)}
        </>
      );
    case 'programme':
      return aboutWords.given(item.drill, causeName(item.cause));
    case 'entry':
      return (
        <>
          {aboutWords.entry(item.drill, item.clean, item.balls, rungName(item.rung))}.{' '}
          {verdictNames[item.verdict]}.{pain(item.pain)}
        </>
      );
    case 'question':
      return (
        <>
          <Link href={`/replies/${item.replyId}`}>
            {item.voice === 'student' ? aboutWords.asked : aboutWords.answered}
          </Link>
          :{said(item.words)}
        </>
      );
    case 'lesson':
      return (
        <>
          {item.words}{' '}
          <span className="soft">{aboutWords.lessonOn(localDayInWords(item.localDate), item.by)}</span>
        </>
      );
    case 'line-test':
      return `${lineTestWords.behindOf(item.behind, item.startsMm.length)} ${placeInWords(item.meanStartMm, units)}.`;
  }
};
