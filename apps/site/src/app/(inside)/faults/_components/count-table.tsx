import type { Reply } from '@ballfirst/contracts/client';
import { faultsWords } from '../../../../words/faults.ts';
import { percentInWords } from '../../../../words/trials.ts';
import styles from './faults.module.css';

type Row = Reply<'readFaultsLately'>['week']['faults'][number];
type Props = { title: string; rows: readonly Row[]; students: number; empty: string; withChange: boolean };

const wide = 120;

/** A share as a bar with its interval as a line over it. */
function ShareBar({ share }: { share: Row['share'] }) {
  return (
    <svg aria-hidden="true" viewBox={`0 0 ${wide} 14`} className={styles.bar}>
      <rect y="3" width={wide} height="8" className={styles.whole} />
      <rect y="3" width={share.share * wide} height="8" className={styles.part} />
      <path
        d={`M${share.low * wide} 1V13M${share.low * wide} 7H${share.high * wide}M${share.high * wide} 1V13`}
        className={styles.doubt}
      />
    </svg>
  );
}

/** Faults or causes, the one that most students share first. */
export function CountTable({ title, rows, students, empty, withChange }: Props) {
  const { change: changeName, ...always } = faultsWords.columns;
  const columns = withChange ? { ...always, change: changeName } : always;
  if (rows.length === 0) {
    return (
      <div className="stack tight">
        <h3>{title}</h3>
        <p className="soft">{empty}</p>
      </div>
    );
  }
  return (
    <div className="stack tight">
      <h3>{title}</h3>
      <table className={styles.table} aria-label={title}>
        <thead>
          <tr>
            {Object.entries(columns).map(([key, name]) => (
              <th key={key} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, name, swings, students: count, share, change }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td className={styles.number}>{faultsWords.of(count, students)}</td>
              <td className={styles.number}>{swings}</td>
              <td>
                <ShareBar share={share} />
                <span className="small soft">
                  {faultsWords.share(
                    percentInWords(share.share),
                    percentInWords(share.low),
                    percentInWords(share.high),
                  )}
                </span>
              </td>
              {withChange && (
                <td className="small">
                  {change === null ? faultsWords.changeNone : faultsWords.change[change]}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
