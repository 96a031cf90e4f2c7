import type { Reply } from '@ballfirst/contracts/client';
import { When } from '../../../../times/when.tsx';
import { mailWords } from '../../../../words/mail.ts';
import styles from './mail.module.css';

/** Letters as they went out: to whom, what about, when; the text opens below. */
export function Letters({ letters }: { letters: Reply<'listMail'>['items'] }) {
  if (letters.length === 0) {
    return (
      <div className="stack tight">
        <h2>{mailWords.emptyTitle}</h2>
        <p>{mailWords.empty}</p>
      </div>
    );
  }
  return (
    <ul className={styles.letters}>
      {letters.map(({ id, to, subject, text, at }) => (
        <li key={id}>
          <details>
            <summary className={styles.head}>
              <span className={styles.subject}>{subject}</span>
              <span className={styles.to}>
                {mailWords.to} {to}
              </span>
              <span className={styles.at}>
                <When at={at} />
              </span>
            </summary>
            <p className={styles.text}>{text.trim()}</p>
          </details>
        </li>
      ))}
    </ul>
  );
}
