import Link from 'next/link';
import { standingNames } from '../../../../../words/names.ts';
import { studentsWords } from '../../../../../words/students.ts';
import { pathOf, type StudentsFilter, standingOrder } from '../search-params.ts';
import styles from './students.module.css';

/** Whom to show, as links: a filter is an address that can be kept and passed on. */
export function StandingFilter({ filter }: { filter: StudentsFilter }) {
  return (
    <nav aria-label={studentsWords.filters} className={styles.filters}>
      {[null, ...standingOrder].map((standing) => (
        <Link
          key={standing ?? 'everybody'}
          href={pathOf({ standing, after: null })}
          className={styles.filter}
          {...(filter.standing === standing && { 'aria-current': 'true' as const })}
        >
          {standing === null ? studentsWords.everybody : standingNames[standing]}
        </Link>
      ))}
    </nav>
  );
}
