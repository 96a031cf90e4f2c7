import type { Reply } from '@ballfirst/contracts/client';
import type { ReactNode } from 'react';
import { When } from '../../../../../times/when.tsx';
import { ageNames, handNames, standingNames } from '../../../../../words/names.ts';
import { studentsWords, studentWords } from '../../../../../words/students.ts';
import { hoursInWords } from '../../../../../words/times.ts';
import { FactList } from './fact-list.tsx';

/** The line of the table, spelt out. */
export function Facts({ student }: { student: Reply<'readStudent'> }) {
  const { columns, flags } = studentsWords;
  const { practice } = student;
  const facts: [name: string, value: ReactNode][] = [
    [
      columns.standing,
      `${standingNames[student.standing]}${student.trialDay === null ? '' : `, ${studentsWords.trialDay(student.trialDay)}`}`,
    ],
    [studentWords.plays, `${handNames[student.hand]}, ${ageNames[student.ageGroup].toLowerCase()}`],
    [studentWords.joined, <When key="joined" at={student.joinedAt} as="day" />],
    ...(student.standing === 'trial' && student.trialEndsAt !== null
      ? [
          [studentWords.trialEnds, <When key="ends" at={student.trialEndsAt} as="day" />] as [
            string,
            ReactNode,
          ],
        ]
      : []),
    [
      studentWords.replyHours,
      student.replyHours === null
        ? studentsWords.never
        : studentWords.workingHours(hoursInWords(student.replyHours)),
    ],
    [
      columns.practice,
      practice.entries === 0
        ? studentsWords.noPractice
        : studentsWords.practice(practice.clean, practice.balls, practice.days),
    ],
    [
      columns.flags,
      student.flags.length === 0
        ? studentsWords.noFlags
        : student.flags.map((flag) => flags[flag]).join(', '),
    ],
  ];
  return (
    <section aria-label={studentWords.facts}>
      <FactList facts={facts} />
    </section>
  );
}
