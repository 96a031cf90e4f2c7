import type { Reply } from '@ballfirst/contracts/client';
import { localDayInWords } from '../../../../../weeks/local-day.ts';
import { WeekBars } from '../../../../../weeks/week-bars.tsx';
import { studentWords } from '../../../../../words/students.ts';
import styles from './student.module.css';

/** The weeks as they were rolled up, newest first. */
export function Weeks({ weeks }: { weeks: Reply<'readStudent'>['weeks'] }) {
  const { weekColumns: columns } = studentWords;
  return (
    <section className="stack tight ruled" aria-labelledby="weeks-title">
      <h2 id="weeks-title">{studentWords.weeks}</h2>
      {weeks.length === 0 ? (
        <p className="soft">{studentWords.noWeeks}</p>
      ) : (
        <>
          {weeks.some(({ balls }) => balls > 0) && <WeekBars weeks={weeks} />}
          <table className={styles.weeks}>
            <thead>
              <tr>
                {Object.values(columns).map((name) => (
                  <th key={name} scope="col">
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {weeks.map((week) => (
                <tr key={week.week}>
                  <th scope="row">{localDayInWords(week.week)}</th>
                  <td>{studentWords.of(week.clean, week.balls)}</td>
                  <td>{week.days}</td>
                  <td>{week.swings}</td>
                  <td>{studentWords.of(week.tallyFat, week.tallyBalls)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
}
