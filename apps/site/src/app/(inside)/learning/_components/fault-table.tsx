import type { Reply } from '@ballfirst/contracts/client';
import { faultById } from '@ballfirst/library/faults';
import { learningWords } from '../../../../words/learning.ts';
import styles from './learning.module.css';

type Learned = Reply<'readLearning'>['faults'][number];

function Rows({ label, causes }: { label: string; causes: Learned['causes'] }) {
  const { columns } = learningWords;
  return (
    <table className={styles.table} aria-label={label}>
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
        {causes.map(({ causeId, name, chosen, seen, expected, libraryRate, rate }) => (
          <tr key={causeId}>
            <th scope="row">{name}</th>
            <td data-name={columns.chosen}>{learningWords.of(chosen, seen)}</td>
            <td data-name={columns.expected}>{learningWords.expected(expected)}</td>
            <td data-name={columns.library}>{learningWords.percent(libraryRate)}</td>
            <td data-name={columns.rate}>{learningWords.percent(rate)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The causes of one miss: how often each was named, and the rates before and after. Those never named are folded. */
export function FaultTable({ learned }: { learned: Learned }) {
  const { name } = faultById(learned.fault);
  const named = learned.causes.filter(({ chosen }) => chosen > 0);
  const others = learned.causes.filter(({ chosen }) => chosen === 0);
  return (
    <section className="stack tight" aria-label={name}>
      <div className="row apart">
        <h2>{name}</h2>
        <span className="soft small">{learningWords.swings(learned.swings)}</span>
      </div>
      {named.length > 0 && <Rows label={name} causes={named} />}
      {others.length > 0 && (
        <details>
          <summary>{learningWords.others(others.length)}</summary>
          <Rows label={`${name}: ${learningWords.others(others.length)}`} causes={others} />
        </details>
      )}
    </section>
  );
}
