'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { When } from '../../../../times/when.tsx';
import { learningWords } from '../../../../words/learning.ts';
import styles from './learning.module.css';

type Props = {
  learning: Pick<Reply<'readLearning'>, 'on' | 'since' | 'oneIn'>;
  mayChange: boolean;
  busy: boolean;
  onTurn: (on: boolean) => void;
};

/** Whether the academy learns: switched by a manager, read by a coach. */
export function LearningSwitch({ learning, mayChange, busy, onTurn }: Props) {
  const { on, since, oneIn } = learning;
  const state =
    since === null ? (
      learningWords.isOff
    ) : (
      <>
        {learningWords.isOn} <When at={since} />
      </>
    );
  if (!mayChange) {
    return (
      <p>
        {state} <span className="soft">{learningWords.onlyManager}</span>
      </p>
    );
  }
  return (
    <label className={styles.switch}>
      <input
        type="checkbox"
        checked={on}
        disabled={busy}
        onChange={(event) => onTurn(event.target.checked)}
      />
      <span>
        <strong>{learningWords.switchName}</strong>
        <span>{learningWords.switchHint(oneIn)}</span>
        <span>{state}</span>
      </span>
    </label>
  );
}
