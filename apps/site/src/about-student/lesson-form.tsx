'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { type FormEvent, useState } from 'react';
import { api } from '../http/browser-api.ts';
import { useOnceKey } from '../http/use-once-key.ts';
import { useSending } from '../http/use-sending.ts';
import { TroubleNote } from '../shell/trouble-note.tsx';
import { useZone } from '../times/when.tsx';
import { aboutWords } from '../words/about.ts';
import styles from './about-student.module.css';
import type { About } from './use-about.ts';

/** A calendar day as a date field writes it. */
const dayIn = (zone: string): string =>
  new Intl.DateTimeFormat('en-CA', { timeZone: zone }).format(new Date());

/** Notes a lesson that was given in person. */
export function LessonForm({ studentId, onNoted }: { studentId: string; onNoted: (about: About) => void }) {
  const zone = useZone();
  const [day, setDay] = useState<string | null>(null);
  const [words, setWords] = useState('');
  const [noted, setNoted] = useState(false);
  const { busy, trouble, run } = useSending();
  const once = useOnceKey();
  const localDate = day ?? dayIn(zone);
  const note = async (event: FormEvent) => {
    event.preventDefault();
    const body = { localDate, words };
    const params = { path: { id: studentId }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await run(() => answerOf(api.POST('/api/students/{id}/lessons', { params, body })));
    if (done === null) return;
    once.answered();
    setWords('');
    setDay(null);
    setNoted(true);
    onNoted(done.answer);
  };
  return (
    <form className="stack tight" method="post" onSubmit={note} aria-labelledby="lesson-title">
      <h3 id="lesson-title">{aboutWords.lesson}</h3>
      <div className={styles.lesson}>
        <label className="field">
          <span>{aboutWords.lessonDay}</span>
          <input
            type="date"
            required
            value={localDate}
            suppressHydrationWarning
            onChange={(event) => setDay(event.target.value)}
          />
        </label>
        <label className="field">
          <span>{aboutWords.lessonWords}</span>
          <input
            required
            maxLength={1000}
            value={words}
            onChange={(event) => {
              setWords(event.target.value);
              setNoted(false);
            }}
          />
        </label>
      </div>
      <TroubleNote trouble={trouble} />
      <p className="row">
        <button type="submit" className="small-button" disabled={busy || words.trim() === ''}>
          {busy ? aboutWords.lessonSaving : aboutWords.lessonSave}
        </button>
        <span role="status" className="small">
          {noted && aboutWords.lessonSaved}
        </span>
      </p>
    </form>
  );
}
