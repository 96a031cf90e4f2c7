import Link from 'next/link';
import { filmWords } from '../../../../words/film.ts';
import { homeWords } from '../../../../words/home.ts';
import { lineTestWords } from '../../../../words/line-test.ts';
import styles from './home.module.css';

/** What helps between two replies, one line each. */
export function OnTheRange() {
  return (
    <nav aria-labelledby="range-title" className="stack tight ruled">
      <h2 id="range-title">{homeWords.rangeTitle}</h2>
      <ul className={styles.lines}>
        <li>
          <Link href="/look" className={styles.inline}>
            {homeWords.look}
          </Link>
        </li>
        <li>
          <Link href="/line-test" className={styles.inline}>
            {lineTestWords.open}
          </Link>
        </li>
        <li>
          <Link href="/filming" className={styles.inline}>
            {filmWords.guide}
          </Link>
        </li>
      </ul>
    </nav>
  );
}
