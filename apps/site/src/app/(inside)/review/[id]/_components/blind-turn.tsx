'use client';
import { causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import Link from 'next/link';
import { learningWords } from '../../../../../words/learning.ts';
import styles from './blind-turn.module.css';

type Props = {
  fault: FaultId;
  canWork: boolean;
  busy: boolean;
  onName: (cause: string) => void;
  onCannotTell: () => void;
};

/** The causes of a miss by name: nothing in their order tells which of them is likely. */
const byName = (fault: FaultId) =>
  causes
    .filter(({ brings }) => brings[fault] !== undefined)
    .map(({ id, name }) => ({ id, name }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));

/** In place of the order of causes on a blind turn: the coach names the first cause, or says that it cannot be told. */
export function BlindTurn({ fault, canWork, busy, onName, onCannotTell }: Props) {
  return (
    <section className="stack tight" aria-labelledby="causes-title">
      <h2 id="causes-title">{learningWords.turnTitle}</h2>
      <p>{learningWords.turnWhy}</p>
      <ul className={styles.names} aria-label={learningWords.turnList}>
        {byName(fault).map(({ id, name }) => (
          <li key={id}>
            <button
              type="button"
              className={styles.name}
              disabled={!canWork || busy}
              onClick={() => onName(id)}
            >
              {name}
            </button>
          </li>
        ))}
      </ul>
      <div className="row apart">
        <button type="button" className="small-button" disabled={!canWork || busy} onClick={onCannotTell}>
          {learningWords.cannotTell}
        </button>
        <Link href="/learning" className="small">
          {learningWords.title}
        </Link>
      </div>
      <p className="small soft">{learningWords.turnHint}</p>
    </section>
  );
}
