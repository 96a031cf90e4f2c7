import Link from 'next/link';
import { DayLine } from '../../../../drawings/day-line.tsx';
import { When } from '../../../../times/when.tsx';
import { ownTrialWords } from '../../../../words/asking.ts';
import { homeWords } from '../../../../words/home.ts';
import styles from './home.module.css';
import type { HomeState } from './use-home.ts';

/** How far the trial is, what comes after it, and that nothing is charged by itself. */
export function TrialStrip({ trial, standing }: Pick<HomeState, 'trial' | 'standing'>) {
  const page = <Link href="/trial">{ownTrialWords.link}</Link>;
  if (standing === 'lapsed') {
    return (
      <p className="notice">
        {homeWords.lapsed} {page}
      </p>
    );
  }
  if (trial === null) return null;
  const words = homeWords.trialDay(trial.day, trial.days);
  return (
    <section className={styles.trial} aria-label={homeWords.trialTitle}>
      <div className="row apart">
        <strong>{words}</strong>
        <span className="soft small">
          {homeWords.trialEnds} <When at={trial.endsAt} as="day" />
        </span>
      </div>
      <DayLine day={trial.day} days={trial.days} />
      <p className="small">
        {homeWords.price(trial.priceWords)} <strong>{homeWords.noCharge}</strong> {page}
      </p>
    </section>
  );
}
