'use client';
import { sendWords } from '../../../../words/send.ts';
import type { Draft } from './draft.ts';
import styles from './step-names.module.css';

const names = [sendWords.steps.film, sendWords.steps.balls, sendWords.steps.say];

/** The three steps, each a way back or forward. */
export function StepNames({ step, onStep }: { step: Draft['step']; onStep: (step: Draft['step']) => void }) {
  return (
    <ol className={styles.steps}>
      {([1, 2, 3] as const).map((one) => (
        <li key={one}>
          <button
            type="button"
            className={styles.step}
            onClick={() => onStep(one)}
            {...(one === step && { 'aria-current': 'step' as const })}
          >
            <span className="unseen">{sendWords.stepOf(one)}: </span>
            <span aria-hidden="true">{one}</span> {names[one - 1]}
          </button>
        </li>
      ))}
    </ol>
  );
}
