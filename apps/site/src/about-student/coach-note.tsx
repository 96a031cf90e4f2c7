'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../http/browser-api.ts';
import { useSending } from '../http/use-sending.ts';
import { TroubleNote } from '../shell/trouble-note.tsx';
import { When } from '../times/when.tsx';
import { aboutWords } from '../words/about.ts';
import styles from './about-student.module.css';

type Note = Reply<'saveCoachNote'>;
type Props = { studentId: string; note: Note; onNote: (note: Note) => void };

/** The private note. Whoever writes at the same time sees the other's words before anything is replaced. */
export function CoachNote({ studentId, note, onNote }: Props) {
  const [draft, setDraft] = useState<string | null>(null);
  const [theirs, setTheirs] = useState<string | null>(null);
  const { busy, trouble, run } = useSending();
  const params = { path: { id: studentId } };
  const close = () => {
    setDraft(null);
    setTheirs(null);
  };
  const readAgain = async () => {
    const done = await run(() => answerOf(api.GET('/api/students/{id}/about', { params })));
    if (done === null) return;
    setTheirs(done.answer.note.words);
    onNote(done.answer.note);
  };
  const save = async () => {
    const header = { 'If-Match': `"${note.version}"` };
    const done = await run(() =>
      answerOf(
        api.PUT('/api/students/{id}/note', { params: { ...params, header }, body: { words: draft ?? '' } }),
      ),
    );
    if (done === null) return;
    onNote(done.answer);
    close();
  };
  if (draft === null) {
    return (
      <div className={styles.block}>
        <h3 className={styles.name}>{aboutWords.note}</h3>
        {note.words === '' ? (
          <p className="soft">{aboutWords.noteEmpty}</p>
        ) : (
          <p className={styles.words}>{note.words}</p>
        )}
        {note.by !== null && note.at !== null && note.words !== '' && (
          <p className="small soft">
            {aboutWords.noteBy(note.by)} <When at={note.at} as="day" />
          </p>
        )}
        <p>
          <button type="button" className="small-button" onClick={() => setDraft(note.words)}>
            {note.words === '' ? aboutWords.noteWrite : aboutWords.noteEdit}
          </button>
        </p>
      </div>
    );
  }
  return (
    <form
      className="stack tight"
      method="post"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      {theirs !== null && (
        <div className="notice look stack tight" role="alert">
          <p>{aboutWords.noteTheirs}</p>
          <blockquote className={styles.words}>{theirs}</blockquote>
          <p>{aboutWords.noteKeepMine}</p>
        </div>
      )}
      <label className="field">
        <span>{aboutWords.note}</span>
        <textarea
          rows={4}
          maxLength={4000}
          value={draft}
          onChange={(event) => setDraft(event.target.value)}
        />
        <span className="hint">{aboutWords.noteHint}</span>
      </label>
      <TroubleNote trouble={trouble} />
      <p className="row">
        {trouble?.code === 'changed-meanwhile' ? (
          <button type="button" className="small-button" disabled={busy} onClick={readAgain}>
            {aboutWords.noteShow}
          </button>
        ) : (
          <button type="submit" className="small-button" disabled={busy}>
            {busy ? aboutWords.noteSaving : aboutWords.noteSave}
          </button>
        )}
        <button type="button" className="plain small-button" onClick={close}>
          {aboutWords.noteBack}
        </button>
      </p>
    </form>
  );
}
