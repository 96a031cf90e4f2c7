import type { Reply } from '@ballfirst/contracts/client';
import { meansWords } from '../../../../../words/means.ts';
import { outcomeForStudent } from '../../../../../words/names.ts';
import styles from './student.module.css';

/** What the student told about time, place, goal and body; nothing where nothing was told. */
export function Means({ means }: { means: Reply<'readStudent'>['means'] }) {
  const { usualMiss, daysPerWeek, minutesPerDay, place, goal, body, bodyAgreed } = means;
  const time = [
    ...(daysPerWeek === null ? [] : [meansWords.daysShort(daysPerWeek)]),
    ...(minutesPerDay === null ? [] : [meansWords.minutesShort(minutesPerDay)]),
  ].join(', ');
  const told: [name: string, value: string][] = [
    [meansWords.usualMiss, usualMiss === null ? '' : outcomeForStudent[usualMiss]],
    [meansWords.time, time],
    [meansWords.place, place === null ? '' : meansWords.placeNames[place]],
    [meansWords.goalShort, goal ?? ''],
    [meansWords.bodyShort, body ?? (bodyAgreed ? meansWords.bodyForCoaches : '')],
  ];
  const shown = told.filter(([, value]) => value !== '');
  if (shown.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="means-title">
      <h2 id="means-title">{meansWords.coachTitle}</h2>
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
