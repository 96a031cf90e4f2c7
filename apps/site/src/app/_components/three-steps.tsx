import { welcomeWords } from '../../words/shell.ts';
import styles from './three-steps.module.css';

/** How it works, as a numbered sheet. */
export function ThreeSteps() {
  return (
    <ol className={styles.steps}>
      {welcomeWords.steps.map(([name, text]) => (
        <li key={name}>
          <h2>{name}</h2>
          <p>{text}</p>
        </li>
      ))}
    </ol>
  );
}
