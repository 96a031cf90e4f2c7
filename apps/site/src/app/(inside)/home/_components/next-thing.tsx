import Link from 'next/link';
import { homeWords } from '../../../../words/home.ts';
import styles from './home.module.css';
import type { HomeState } from './use-home.ts';

/** The one thing to do next. Practice stands on this page, so its link leads down it. */
export function NextThing({ next }: { next: HomeState['next'] }) {
  const does = homeWords.do[next.kind];
  const href = next.kind === 'practise' ? '#practice' : next.href;
  return (
    <section className={next.kind === 'hold' ? styles.hold : styles.next} aria-label={homeWords.nextTitle}>
      <p className="soft small">{next.kind === 'hold' ? homeWords.hold : homeWords.nextTitle}</p>
      <h1>{next.words}</h1>
      {does !== null && href !== null && (
        <p>
          <Link href={href} className="button main">
            {does}
          </Link>
        </p>
      )}
    </section>
  );
}
