import { aboutWords } from '../words/about.ts';
import { outcomeNames } from '../words/names.ts';
import styles from './about-student.module.css';
import type { About } from './use-about.ts';

/** What the student told: wishes, usual miss, and about the body, which stands out. */
export function Told({ means }: { means: About['means'] }) {
  const { goal, usualMiss, body, bodyAgreed } = means;
  const bodyWords = body ?? (bodyAgreed ? aboutWords.bodyForCoaches : null);
  return (
    <dl className="stack tight">
      {goal !== null && goal !== '' && (
        <div>
          <dt className={styles.name}>{aboutWords.goal}</dt>
          <dd>{goal}</dd>
        </div>
      )}
      {usualMiss !== null && (
        <div>
          <dt className={styles.name}>{aboutWords.miss}</dt>
          <dd>{outcomeNames[usualMiss]}</dd>
        </div>
      )}
      <div>
        <dt className={styles.name}>{aboutWords.body}</dt>
        {bodyWords === null ? (
          <dd className="soft">{aboutWords.bodyNone}</dd>
        ) : (
          <dd className={styles.body}>{bodyWords}</dd>
        )}
      </div>
    </dl>
  );
}
