'use client';
import { useState } from 'react';
import { LineTestResult } from '../line-test/line-test-result.tsx';
import { TroubleNote } from '../shell/trouble-note.tsx';
import { aboutWords } from '../words/about.ts';
import { lineTestWords } from '../words/line-test.ts';
import styles from './about-student.module.css';
import { CoachNote } from './coach-note.tsx';
import { LastDrill } from './last-drill.tsx';
import { LessonForm } from './lesson-form.tsx';
import { NoteLineTest } from './note-line-test.tsx';
import { Timeline } from './timeline.tsx';
import { Told } from './told.tsx';
import { type About, useAbout } from './use-about.ts';

type Props = {
  studentId: string;
  /** Null: it is read once the page stands, so that a swing opens without waiting for it. */
  first: About | null;
  /** Beside a swing, which tells the goal and, where one runs, the drill: only the rest is told. Null: a page of its own. */
  beside: { practised: boolean } | null;
  /** A line test was noted here. */
  onLineTest?: () => Promise<void>;
};

/** What a coach wants to know of the student: wishes, body, private note, last drill, and what happened so far. */
export function AboutStudent({ studentId, first, beside, onLineTest }: Props) {
  const { about, setAbout, renew, trouble } = useAbout(studentId, first);
  const [open, setOpen] = useState(beside === null);
  if (about === null) {
    return (
      <section className={styles.about} data-alone={beside === null} aria-busy={trouble === null}>
        {trouble === null ? (
          <p className="soft small">{aboutWords.loading}</p>
        ) : (
          <TroubleNote trouble={trouble} />
        )}
      </section>
    );
  }
  const { student, lineTest } = about;
  return (
    <section
      className={styles.about}
      data-alone={beside === null}
      aria-label={aboutWords.title(student.name)}
    >
      <div className={styles.strip}>
        <CoachNote
          studentId={student.id}
          note={about.note}
          onNote={(note) => setAbout((now) => now && { ...now, note })}
        />
        <Told means={about.means} beside={beside !== null} />
        <LastDrill last={about.last} progress={about.progress} told={beside?.practised === true} />
        {lineTest !== null && (
          <div className={styles.block}>
            <h3 className={styles.name}>{lineTestWords.title}</h3>
            <LineTestResult test={lineTest} units={student.units} hand={student.hand} />
          </div>
        )}
      </div>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{aboutWords.more}</summary>
        {open && (
          <div className={beside === null ? styles.more : `${styles.more} ${styles.beside}`}>
            <Timeline about={about} />
            <div className="stack">
              <LessonForm studentId={student.id} onNoted={setAbout} />
              <NoteLineTest
                student={student}
                onKept={async () => {
                  await Promise.all([renew(), onLineTest?.()]);
                }}
              />
            </div>
          </div>
        )}
      </details>
    </section>
  );
}
