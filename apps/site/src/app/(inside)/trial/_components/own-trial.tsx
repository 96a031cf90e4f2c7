'use client';
import type { Reply } from '@ballfirst/contracts/client';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import Link from 'next/link';
import { useState } from 'react';
import { DayLine } from '../../../../drawings/day-line.tsx';
import { Side } from '../../../../then-and-now/side.tsx';
import { When } from '../../../../times/when.tsx';
import { ownTrialWords } from '../../../../words/asking.ts';
import { homeWords } from '../../../../words/home.ts';
import { momentForStudent } from '../../../../words/moments-for-student.ts';
import { JoinBlock } from './join-block.tsx';
import styles from './trial.module.css';

type Trial = Reply<'readOwnTrial'>;

function Standing({ trial }: { trial: Trial }) {
  if (trial.standing === 'lapsed') return <p className="notice">{ownTrialWords.ended}</p>;
  if (trial.standing !== 'trial') return <p>{ownTrialWords.none}</p>;
  if (trial.day === null || trial.endsAt === null) return <p>{ownTrialWords.notBegun(trial.days)}</p>;
  return (
    <div className="stack tight">
      <div className="row apart">
        <strong>{ownTrialWords.day(trial.day, trial.days)}</strong>
        <span className="soft small">
          {ownTrialWords.ends} <When at={trial.endsAt} as="day" />
        </span>
      </div>
      <DayLine day={trial.day} days={trial.days} />
    </div>
  );
}

/** Where the trial stands, then and now at the same moment, and what comes after. */
export function OwnTrial({ first, hand }: { first: Trial; hand: PlayingHand }) {
  const [trial, setTrial] = useState(first);
  const { replies, practiceEntries, rungsPassed } = trial;
  return (
    <>
      <h1>{ownTrialWords.title}</h1>
      <Standing trial={trial} />
      <section className="stack" aria-labelledby="pair">
        <h2 id="pair">{ownTrialWords.pairTitle}</h2>
        {trial.first === null ? (
          <p>
            {ownTrialWords.noSwing} <Link href="/send">{homeWords.do['send-first']}</Link>
          </p>
        ) : (
          <div className={styles.pair}>
            <Side title={ownTrialWords.firstSwing} side={trial.first} />
            {trial.latest === null ? (
              <p className="soft">{ownTrialWords.oneSwing}</p>
            ) : (
              <Side title={ownTrialWords.latestSwing} side={trial.latest} />
            )}
          </div>
        )}
        {trial.moment !== null && (
          <p className="hint">{ownTrialWords.sameMoment(momentForStudent(trial.moment, hand))}</p>
        )}
      </section>
      {replies + practiceEntries > 0 && (
        <section className="stack tight" aria-labelledby="done">
          <h2 id="done">{ownTrialWords.done}</h2>
          <ul className={styles.done}>
            <li>{ownTrialWords.replies(replies)}</li>
            <li>{ownTrialWords.entries(practiceEntries)}</li>
            <li>{ownTrialWords.rungs(rungsPassed)}</li>
          </ul>
        </section>
      )}
      <JoinBlock trial={trial} onAsked={setTrial} />
    </>
  );
}
