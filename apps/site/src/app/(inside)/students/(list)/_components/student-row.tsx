import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { When } from '../../../../../times/when.tsx';
import { rungNames, spelt, standingNames } from '../../../../../words/names.ts';
import { verdictNames } from '../../../../../words/progress.ts';
import { studentsWords } from '../../../../../words/students.ts';
import styles from './students.module.css';

type Student = Reply<'listStudents'>['items'][number];

type CellProps = { name: string; empty: boolean; short?: boolean; children: ReactNode };

/** `short`: a few words that never break on a wide screen. */
function Cell({ name, empty, short = false, children }: CellProps) {
  return (
    <td className={short ? `${styles.cell} ${styles.short}` : styles.cell} data-empty={empty}>
      <span className={styles.name} aria-hidden="true">
        {name}
      </span>
      <span>{children}</span>
    </td>
  );
}

const day = (at: string | null) =>
  at === null ? <span className="soft">{studentsWords.never}</span> : <When at={at} as="day" />;

/** One student as a line: how they stand, what came and went, what needs a look. */
export function StudentRow({ student }: { student: Student }) {
  const { columns, flags } = studentsWords;
  const { practice } = student;
  const cause = causes.find(({ id }) => id === student.cause);
  return (
    <tr className={styles.row}>
      <th scope="row" className={styles.who}>
        <Link href={`/students/${student.id}`}>{student.name}</Link>
      </th>
      <Cell name={columns.standing} empty={false} short>
        {standingNames[student.standing]}
        {student.trialDay !== null && `, ${studentsWords.trialDay(student.trialDay)}`}
      </Cell>
      <Cell name={columns.lastSwing} empty={student.lastSwingAt === null}>
        {day(student.lastSwingAt)}
      </Cell>
      <Cell name={columns.lastReply} empty={student.lastReplyAt === null}>
        {day(student.lastReplyAt)}
      </Cell>
      <Cell name={columns.practice} empty={practice.entries === 0}>
        {practice.entries === 0 ? (
          <span className="soft">{studentsWords.noPractice}</span>
        ) : (
          <>
            {student.cause !== null && studentsWords.thisWeek(practice.daysThisWeek, practice.daysPlanned)}
            <span className={`soft small ${styles.detail}`}>
              {studentsWords.practice(practice.clean, practice.balls, practice.days)}
            </span>
          </>
        )}
      </Cell>
      <Cell name={columns.cause} empty={student.cause === null}>
        {student.cause === null ? (
          <span className="soft">{studentsWords.noCause}</span>
        ) : (
          <>
            {cause?.name ?? spelt(student.cause)}
            {student.rung !== null && (
              <span className="soft small">
                , {(rungNames[student.rung] ?? spelt(student.rung)).toLowerCase()}
              </span>
            )}
          </>
        )}
      </Cell>
      <Cell name={columns.verdict} empty={student.verdict === null} short>
        {student.verdict === null ? (
          <span className="soft">
            {student.cause === null ? studentsWords.nothing : studentsWords.noVerdict}
          </span>
        ) : (
          verdictNames[student.verdict]
        )}
      </Cell>
      <Cell name={columns.flags} empty={student.flags.length === 0}>
        {student.flags.length === 0 && <span className="soft">{studentsWords.nothing}</span>}
        <span className={styles.flags}>
          {student.flags.map((flag) => (
            <span key={flag} className={flag === 'pain' ? styles.pain : styles.flag}>
              {flags[flag]}
            </span>
          ))}
        </span>
      </Cell>
    </tr>
  );
}
