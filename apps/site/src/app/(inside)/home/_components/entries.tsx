import type { Programme } from '../../../../drill-card/rung-states.ts';
import { When } from '../../../../times/when.tsx';
import { painNames, rungNames, spelt } from '../../../../words/names.ts';
import { practiceWords } from '../../../../words/practice.ts';
import styles from './home.module.css';

type Entry = Programme['entries'][number];
const shown = 3;

function Line({ entry, drill }: { entry: Entry; drill: string | null }) {
  return (
    <li className={styles.line}>
      <span>
        {drill !== null && `${drill}: `}
        <strong>{practiceWords.entry(entry.clean, entry.balls)}</strong>{' '}
        {(rungNames[entry.rung] ?? spelt(entry.rung)).toLowerCase()}
        {entry.filmed && `, ${practiceWords.entryFilmed}`}
        {entry.pain !== 'none' && `, ${painNames[entry.pain].toLowerCase()}`}
      </span>
      <span className="soft small">
        {practiceWords.verdicts[entry.verdict]}, <When at={entry.at} as="day" />
      </span>
    </li>
  );
}

/** What was logged, the newest first; with the drill's name where there are two. */
export function Entries({ programme }: { programme: Programme }) {
  const { entries, drill, second } = programme;
  const nameOf = (entry: Entry): string | null =>
    second === null ? null : entry.drillId === second.drill.id ? second.drill.name : drill.name;
  if (entries.length === 0) return <p className="soft small">{practiceWords.noEntries}</p>;
  const older = entries.slice(shown);
  const lines = (some: readonly Entry[]) => (
    <ul className={styles.lines}>
      {some.map((entry) => (
        <Line key={entry.id} entry={entry} drill={nameOf(entry)} />
      ))}
    </ul>
  );
  return (
    <section className="stack tight" aria-labelledby="entries-title">
      <h3 id="entries-title">{practiceWords.entriesTitle}</h3>
      {lines(entries.slice(0, shown))}
      {older.length > 0 && (
        <details>
          <summary>{practiceWords.older(older.length)}</summary>
          {lines(older)}
        </details>
      )}
    </section>
  );
}
