import type { Reply } from '@ballfirst/contracts/client';
import { When } from '../../../../../times/when.tsx';
import { standingNames, standingReason } from '../../../../../words/names.ts';
import { studentWords } from '../../../../../words/students.ts';
import styles from './student.module.css';

/** How the student came to stand as they do, newest first. */
export function Standings({ standings }: { standings: Reply<'readStudent'>['standings'] }) {
  return (
    <section className="stack tight ruled" aria-labelledby="standings-title">
      <h2 id="standings-title">{studentWords.standings}</h2>
      <ol className={styles.swings}>
        {standings.map(({ from, to, reason, by, at }) => (
          <li key={at} className={styles.swing}>
            <div className="row apart">
              <strong>
                {from === null
                  ? studentWords.joinedAs(standingNames[to])
                  : studentWords.moved(standingNames[from], standingNames[to])}
              </strong>
              <span className="soft small">
                <When at={at} />
              </span>
            </div>
            <p className="small soft">
              {reason === '' ? '' : `${standingReason(reason)}, `}
              {studentWords.by(by)}
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}
