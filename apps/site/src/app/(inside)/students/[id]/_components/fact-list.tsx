import type { ReactNode } from 'react';
import styles from './student.module.css';

/** Names and values beside each other. */
export const FactList = ({ facts }: { facts: readonly (readonly [name: string, value: ReactNode])[] }) => (
  <dl className={styles.facts}>
    {facts.map(([name, value]) => (
      <div key={name}>
        <dt>{name}</dt>
        <dd>{value}</dd>
      </div>
    ))}
  </dl>
);
