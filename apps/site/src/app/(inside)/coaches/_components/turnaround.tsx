import type { Reply } from '@ballfirst/contracts/client';
import { coachesWords } from '../../../../words/coaches.ts';
import styles from './coaches.module.css';

type Coaches = Reply<'readCoaches'>;
type Figures = Coaches['all'];

function Cells({ figures, claimed }: { figures: Figures; claimed: number }) {
  const { answered, hoursHalf, hoursMost, kept } = figures;
  const cells: [name: string, value: string][] = [
    [coachesWords.claimed, String(claimed)],
    [coachesWords.answered, String(answered)],
    [coachesWords.half, hoursHalf === null ? coachesWords.none : coachesWords.hours(hoursHalf)],
    [coachesWords.most, hoursMost === null ? coachesWords.none : coachesWords.hours(hoursMost)],
    [coachesWords.kept, kept === null ? coachesWords.none : coachesWords.share(kept)],
  ];
  return (
    <>
      {cells.map(([name, value]) => (
        <td key={name} data-name={name} className={value === coachesWords.none ? 'soft' : undefined}>
          {value}
        </td>
      ))}
    </>
  );
}

/** How long answers take, by coach; on a phone each coach is a block of its own. */
export function Turnaround({ coaches }: { coaches: Coaches }) {
  const { items, all } = coaches;
  const columns = [
    ...[coachesWords.coach, coachesWords.claimed, coachesWords.answered],
    ...[coachesWords.half, coachesWords.most, coachesWords.kept],
  ];
  return (
    <section className="stack tight" aria-labelledby="turnaround">
      <h2 id="turnaround">{coachesWords.table}</h2>
      <table className={styles.table}>
        <thead>
          <tr>
            {columns.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {items.map((coach) => (
            <tr key={coach.id}>
              <th scope="row">{coach.name}</th>
              <Cells figures={coach} claimed={coach.claimed} />
            </tr>
          ))}
          <tr className={styles.all}>
            <th scope="row">{coachesWords.all}</th>
            <Cells figures={all} claimed={items.reduce((sum, { claimed }) => sum + claimed, 0)} />
          </tr>
        </tbody>
      </table>
      <p className="hint">{coachesWords.note}</p>
    </section>
  );
}
