'use client';
import { answerOf, ifMatch, type Reply } from '@ballfirst/contracts/client';
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { replyWords } from '../../../../../words/reply.ts';
import { useFilmsFor } from './use-films-for.ts';

/** The words of a reply that has gone out and its film, put right behind one button. */
export function CorrectForm({ reply }: { reply: Reply<'readReply'> }) {
  const [open, setOpen] = useState(false);
  const sending = useSending();
  const router = useRouter();
  const films = useFilmsFor(reply, open);
  const held = reply.teachingClip?.cause ?? '';
  const correct = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const told = new FormData(event.currentTarget);
    const words = String(told.get('words') ?? '').trim();
    const film = told.get('film');
    const params = { path: { id: reply.id }, header: { 'If-Match': ifMatch(reply.version) } };
    const body = { words, ...(film === null || film === held ? {} : { teachingClip: String(film) || null }) };
    const done = await sending.run(() => answerOf(api.PUT('/api/replies/{id}/words', { params, body })));
    if (done === null) return;
    setOpen(false);
    router.refresh();
  };
  if (!open) {
    return (
      <p>
        <button type="button" onClick={() => setOpen(true)}>
          {replyWords.correct}
        </button>
      </p>
    );
  }
  return (
    <form className="stack tight" method="post" onSubmit={correct}>
      <label className="field">
        <span>{replyWords.correctWords}</span>
        <textarea name="words" required maxLength={4000} rows={6} defaultValue={reply.words} />
      </label>
      {films.length > 0 && (
        <label className="field">
          <span>{replyWords.correctFilm}</span>
          <select name="film" defaultValue={held}>
            <option value="">{replyWords.correctFilmNone}</option>
            {films.map(({ cause, title }) => (
              <option key={cause} value={cause}>
                {title}
              </option>
            ))}
          </select>
        </label>
      )}
      <p className="hint">{replyWords.correctHint}</p>
      <TroubleNote trouble={sending.trouble} />
      <div className="row">
        <button type="submit" className="main" disabled={sending.busy}>
          {sending.busy ? replyWords.correcting : replyWords.correctGo}
        </button>
        <button type="button" className="plain" onClick={() => setOpen(false)}>
          {replyWords.correctBack}
        </button>
      </div>
    </form>
  );
}
