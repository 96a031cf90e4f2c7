import { causes } from '@ballfirst/library/causes';
import { When } from '../times/when.tsx';
import { aboutWords } from '../words/about.ts';
import { rungNames, spelt } from '../words/names.ts';
import styles from './about-student.module.css';
import type { About } from './use-about.ts';

type Props = Pick<About, 'last' | 'progress'> & {
  /** Cause, drill and step stand in the strip above already. */
  told: boolean;
};

const rungOf = (rung: string | null): string | null =>
  rung === null ? null : (rungNames[rung] ?? spelt(rung)).toLowerCase();

/** The drill that supports it, with what was practised of that. */
function Second({ second }: { second: NonNullable<About['last']>['second'] }) {
  if (second === null) return null;
  return (
    <p className="small">
      {aboutWords.secondLine(second.drill, rungOf(second.rung))}.{' '}
      {aboutWords.practised(second.entries, second.clean, second.balls)}
    </p>
  );
}

/** The last cause that was answered, its drill, and whether it works. */
export function LastDrill({ last, progress, told }: Props) {
  if (told && last !== null) {
    return (
      <div className={styles.block}>
        <h3 className={styles.name}>{aboutWords.works}</h3>
        {progress !== null && (
          <p>
            <strong>{progress.words}</strong> {progress.balls}
          </p>
        )}
        <p className="small">
          {aboutWords.inAll} <When at={last.since} as="day" />:{' '}
          {aboutWords.practised(last.entries, last.clean, last.balls)}
        </p>
        <Second second={last.second} />
      </div>
    );
  }
  return (
    <div className={styles.block}>
      <h3 className={styles.name}>{aboutWords.last}</h3>
      {last === null ? (
        <p className="soft">{aboutWords.lastNone}</p>
      ) : (
        <>
          <p>{causes.find(({ id }) => id === last.cause)?.name ?? spelt(last.cause)}</p>
          <p className="small">
            {aboutWords.lastLine(last.drill, rungOf(last.rung) ?? '')}, {aboutWords.statuses[last.status]}{' '}
            {aboutWords.since} <When at={last.since} as="day" />.{' '}
            {aboutWords.practised(last.entries, last.clean, last.balls)}
          </p>
          <Second second={last.second} />
        </>
      )}
      {progress !== null && (
        <p className="small">
          <strong>{progress.words}</strong> {progress.balls}
        </p>
      )}
    </div>
  );
}
