import type { Reply } from '@ballfirst/contracts/client';
import type { ReactNode } from 'react';
import { When } from '../../../../times/when.tsx';
import { coachesWords } from '../../../../words/coaches.ts';
import styles from './coaches.module.css';

/** What waits at this moment, against the promise. */
export function WaitingNow({ coaches }: { coaches: Reply<'readCoaches'> }) {
  const { waiting, late, oldestSentAt, promiseHours, filmAgain } = coaches;
  const facts: [name: string, value: ReactNode][] = [
    [coachesWords.waiting, waiting],
    [coachesWords.late, late],
    [
      coachesWords.oldest,
      oldestSentAt === null ? coachesWords.nothingWaits : <When key="oldest" at={oldestSentAt} />,
    ],
    [coachesWords.promise, coachesWords.promiseHours(promiseHours)],
    [coachesWords.filmAgain, filmAgain === null ? coachesWords.none : coachesWords.share(filmAgain)],
  ];
  return (
    <dl className={styles.facts}>
      {facts.map(([name, value]) => (
        <div key={name} data-late={name === coachesWords.late && late > 0 ? 'yes' : undefined}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
