import { aboutWords } from '../words/about.ts';
import { outcomeNames } from '../words/names.ts';
import styles from './about-student.module.css';
import type { About } from './use-about.ts';

/** What the student told: wishes, usual miss, and about the body, which stands out. Beside a swing its strip has the wish. */
export function Told({ means, beside }: { means: About['means']; beside: boolean }) {
  const { goal, usualMiss, body, bodyAgreed } = means;
  const bodyWords = body ?? (bodyAgreed ? aboutWords.bodyForCoaches : null);
  return (
    <dl className={styles.told}>
      {!beside && goal !== null && goal !== '' && (
        <div className={styles.block}>
          <dt className={styles.name}>{aboutWords.goal}</dt>
          <dd>{goal}</dd>
        </div>
      )}
      {usualMiss !== null && (
        <div className={styles.block}>
          <dt className={styles.name}>{aboutWords.miss}</dt>
          <dd>{outcomeNames[usualMiss]}</dd>
        </div>
      )}
      <div className={styles.block}>
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
