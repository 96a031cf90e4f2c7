'use client';
import type { Observation as Asked } from '@ballfirst/library/types';
import { reviewWords } from '../../../../../words/review.ts';
import type { Observation } from '../_marking/marking.ts';
import styles from './evidence.module.css';

type Props = {
  asked: readonly Asked[];
  answers: readonly Observation[];
  canWork: boolean;
  onAnswer: (observation: Observation) => void;
};

/** What the coach sees: at most six questions, one tap each. */
export function ObservationRow({ asked, answers, canWork, onAnswer }: Props) {
  if (asked.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="observations-title">
      <h2 id="observations-title">{reviewWords.observationsTitle}</h2>
      <div className={styles.observations}>
        {asked.map(({ key, question }) => {
          const given = answers.find((one) => one.key === key)?.answer;
          return (
            <fieldset key={key} className={styles.observation} disabled={!canWork}>
              <legend>{question}</legend>
              <div className={styles.answers}>
                {(['yes', 'no', 'cannot-tell'] as const).map((answer) => (
                  <label key={answer} className={styles.answer}>
                    <input
                      type="radio"
                      name={key}
                      className="unseen"
                      checked={given === answer}
                      onChange={() => onAnswer({ key, answer })}
                    />
                    {reviewWords.answers[answer]}
                  </label>
                ))}
              </div>
            </fieldset>
          );
        })}
      </div>
    </section>
  );
}
