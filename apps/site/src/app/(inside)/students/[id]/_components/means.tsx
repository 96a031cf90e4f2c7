import type { Reply } from '@ballfirst/contracts/client';
import { meansWords } from '../../../../../words/means.ts';
import styles from './student.module.css';

/** With how much time and where the student practises; nothing where nothing was told. */
export function Means({ means }: { means: Reply<'readStudent'>['means'] }) {
  const { daysPerWeek, minutesPerDay, place } = means;
  const time = [
    ...(daysPerWeek === null ? [] : [meansWords.daysShort(daysPerWeek)]),
    ...(minutesPerDay === null ? [] : [meansWords.minutesShort(minutesPerDay)]),
  ].join(', ');
  const told: [name: string, value: string][] = [
    [meansWords.time, time],
    [meansWords.place, place === null ? '' : meansWords.placeNames[place]],
  ];
  const shown = told.filter(([, value]) => value !== '');
  if (shown.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="means-title">
      <h2 id="means-title">{meansWords.practises}</h2>
      <dl className={styles.facts}>
        {shown.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
