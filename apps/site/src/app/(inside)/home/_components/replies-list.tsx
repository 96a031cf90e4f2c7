import Link from 'next/link';
import { When } from '../../../../times/when.tsx';
import { homeWords } from '../../../../words/home.ts';
import styles from './home.module.css';
import type { HomeState } from './use-home.ts';

/** Every reply stays readable; one that was not opened yet says so. */
export function RepliesList({ replies }: { replies: HomeState['replies'] }) {
  return (
    <section className="stack tight ruled" aria-labelledby="replies-title">
      <h2 id="replies-title">{homeWords.repliesTitle}</h2>
      {replies.length === 0 && <p className="soft">{homeWords.noReplies}</p>}
      <ul className={styles.lines}>
        {replies.map(({ id, sentence, sentAt, readAt }) => (
          <li key={id} className={styles.line}>
            <Link href={`/replies/${id}`} className={styles.whole}>
              {readAt === null && <strong className={styles.unread}>{homeWords.unread}</strong>}
              {sentence}
            </Link>
            <span className="soft small">
              <When at={sentAt} as="day" />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
