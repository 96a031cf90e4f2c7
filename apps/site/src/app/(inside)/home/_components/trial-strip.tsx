import { DayLine } from '../../../../drawings/day-line.tsx';
import { When } from '../../../../times/when.tsx';
import { homeWords } from '../../../../words/home.ts';
import styles from './home.module.css';
import type { HomeState } from './use-home.ts';

/** How far the trial is, what comes after it, and that nothing is charged by itself. */
export function TrialStrip({ trial, standing }: Pick<HomeState, 'trial' | 'standing'>) {
  if (standing === 'lapsed') return <p className="notice">{homeWords.lapsed}</p>;
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
        {homeWords.price(trial.priceWords)} <strong>{homeWords.noCharge}</strong>
      </p>
    </section>
  );
}
