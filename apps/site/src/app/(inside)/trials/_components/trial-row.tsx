'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import type { ReactNode } from 'react';
import { DayLine } from '../../../../drawings/day-line.tsx';
import { When } from '../../../../times/when.tsx';
import { extendWords } from '../../../../words/coaches.ts';
import { trialsWords } from '../../../../words/trials.ts';
import { ExtendTrial } from './extend-trial.tsx';
import { SetPaid } from './set-paid.tsx';
import styles from './trials.module.css';

type Trial = Reply<'readTrials'>['items'][number];

/** What went well so far, and what has not happened yet. */
function Steps({ trial }: { trial: Trial }) {
  const not = <span className="soft">{trialsWords.notYet}</span>;
  const day = (at: string | null) => (at === null ? not : <When at={at} as="day" />);
  const steps: [name: string, value: ReactNode][] = [
    [trialsWords.firstSwing, day(trial.firstSwingAt)],
    [
      trialsWords.reply,
      <span key="reply">
        {day(trial.firstReplyAt)}
        {trial.replyHours !== null && (
          <span className="soft small"> {trialsWords.replyTook(trial.replyHours)}</span>
        )}
      </span>,
    ],
    [trialsWords.read, day(trial.replyReadAt)],
    [
      trialsWords.practice,
      trial.practiceEntries === 0 ? not : trialsWords.practised(trial.practiceEntries, trial.rungsPassed),
    ],
  ];
  return (
    <dl className={styles.steps}>
      {steps.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** A swing was sent, and nobody can see it: that is another thing than none. */
const stopName = ({ stop, firstSwingAt }: Trial): string =>
  stop === 'no-first-swing' && firstSwingAt !== null ? trialsWords.unusable : trialsWords.stops[stop];

/** One open trial: how far, what happened, where it stands still, what to do. */
export function TrialRow({ trial, onPaid }: { trial: Trial; onPaid: () => void }) {
  const { student, day, days, stop } = trial;
  const router = useRouter();
  return (
    <li className={styles.trial} data-stop={stop}>
      <div className={styles.who}>
        <Link href={`/students/${student.id}`} className={styles.name}>
          {student.name}
        </Link>
        <span className="small soft">
          {trialsWords.day(day, days)},{' '}
          {day === 0 ? (
            trialsWords.wouldEnd
          ) : (
            <>
              {trialsWords.ends} <When at={trial.endsAt} as="day" />
            </>
          )}
        </span>
        <DayLine day={day} days={days} />
      </div>
      <Steps trial={trial} />
      <div className="stack tight">
        <p>
          <strong className={stop === 'moving' ? undefined : styles.stop}>
            {trial.joinAskedAt === null ? stopName(trial) : extendWords.asked}
          </strong>
        </p>
        <p className="small">
          <span className="soft">{trialsWords.next}</span> {trial.nextAction}
        </p>
      </div>
      <div className={styles.moves}>
        <SetPaid student={student} onPaid={onPaid} />
        {day > 0 && <ExtendTrial student={student} onExtended={() => router.refresh()} />}
      </div>
    </li>
  );
}
