import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { Further } from '../../../../../paging/further.tsx';
import { studentsWords } from '../../../../../words/students.ts';
import { pathOf, type StudentsFilter } from '../search-params.ts';
import { StandingFilter } from './standing-filter.tsx';
import { StudentRow } from './student-row.tsx';
import styles from './students.module.css';

type Props = { page: Reply<'listStudents'>; filter: StudentsFilter };

/** One table; on a narrow screen each row becomes a card of named lines. */
export function Students({ page, filter }: Props) {
  const { columns } = studentsWords;
  return (
    <>
      <StandingFilter filter={filter} />
      {page.items.length === 0 ? (
        <div className="stack tight">
          <h2>{studentsWords.emptyTitle}</h2>
          <p>{filter.standing === null ? studentsWords.empty : studentsWords.emptyFiltered}</p>
          {filter.standing !== null && <Link href="/students">{studentsWords.showAll}</Link>}
        </div>
      ) : (
        <table className={styles.table} aria-label={studentsWords.title}>
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
            {page.items.map((student) => (
              <StudentRow key={student.id} student={student} />
            ))}
          </tbody>
        </table>
      )}
      <Further
        words={studentsWords}
        after={filter.after}
        next={page.next}
        pathOf={(after) => pathOf({ ...filter, after })}
      />
    </>
  );
}
