import { localDayInWords } from '../../../../weeks/local-day.ts';
import { WeekBars } from '../../../../weeks/week-bars.tsx';
import { practiceWords } from '../../../../words/practice.ts';
import type { HomeState } from './use-home.ts';

/** The weeks of practice, drawn and in numbers. */
export function Weeks({ weeks }: { weeks: HomeState['weeks'] }) {
  const last = weeks.find(({ balls }) => balls > 0);
  return (
    <section className="stack tight ruled" aria-labelledby="weeks-title">
      <h2 id="weeks-title">{practiceWords.weeksTitle}</h2>
      {last === undefined ? (
        <p className="soft">{practiceWords.weeksEmpty}</p>
      ) : (
        <>
          <p>{practiceWords.thisWeek(last.clean, last.balls)}</p>
          <WeekBars weeks={weeks} />
          <details>
            <summary>{practiceWords.inNumbers}</summary>
            <table>
              <thead>
                <tr>
                  <th scope="col">{practiceWords.week}</th>
                  <th scope="col">{practiceWords.days}</th>
                  <th scope="col">{practiceWords.ballsOfWeek}</th>
                  <th scope="col">{practiceWords.cleanOfWeek}</th>
                </tr>
              </thead>
              <tbody>
                {weeks.map(({ week, days, balls, clean }) => (
                  <tr key={week}>
                    <th scope="row">{localDayInWords(week)}</th>
                    <td>{days}</td>
                    <td>{balls}</td>
                    <td>{clean}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </details>
        </>
      )}
    </section>
  );
}
