'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useState } from 'react';
import { AboutStudent } from '../../../../../about-student/about-student.tsx';
import { studentWords } from '../../../../../words/students.ts';
import { Facts } from './facts.tsx';
import { Means } from './means.tsx';
import { StandingForm } from './standing-form.tsx';
import { Standings } from './standings.tsx';
import styles from './student.module.css';
import { Swings } from './swings.tsx';
import { Weeks } from './weeks.tsx';

type Props = {
  first: Reply<'readStudent'>;
  about: Reply<'readAbout'>;
  swings: Reply<'listSubmissions'>['items'];
  mayChange: boolean;
};

/** One student: how they stand, their swings and weeks, and how they came to stand so. */
export function Student({ first, about, swings, mayChange }: Props) {
  const [student, setStudent] = useState(first);
  return (
    <>
      <div className="stack tight">
        <p>
          <Link href="/students" className={styles.back}>
            {studentWords.back}
          </Link>
        </p>
        <h1>{student.name}</h1>
        <p className="soft">{student.email}</p>
      </div>
      <Facts student={student} />
      <Means means={student.means} />
      <AboutStudent studentId={student.id} first={about} beside={null} />
      <Swings swings={swings} />
      <Weeks weeks={student.weeks} />
      <Standings standings={student.standings} />
      {mayChange && <StandingForm student={student} onChanged={setStudent} />}
    </>
  );
}
