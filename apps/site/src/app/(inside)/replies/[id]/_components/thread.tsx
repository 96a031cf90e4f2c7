'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { When } from '../../../../../times/when.tsx';
import { threadWords } from '../../../../../words/asking.ts';
import styles from './thread.module.css';

type Lines = Reply<'readReply'>['thread'];
type Props = { replyId: string; first: Lines; reader: 'student' | 'coach' };

/** The short thread under a reply: a student asks, a coach answers. */
export function Thread({ replyId, first, reader }: Props) {
  const [lines, setLines] = useState(first);
  const [words, setWords] = useState('');
  const sending = useSending();
  const once = useOnceKey();
  const mayWrite = reader === 'student' || lines.length > 0;

  const send = async (event: FormEvent) => {
    event.preventDefault();
    const body = { words: words.trim() };
    const params = { path: { id: replyId }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await sending.run(() =>
      reader === 'student'
        ? answerOf(api.POST('/api/replies/{id}/questions', { params, body }))
        : answerOf(api.POST('/api/replies/{id}/answers', { params, body })),
    );
    if (done === null) return;
    once.answered();
    setLines(done.answer.thread);
    setWords('');
  };

  return (
    <section id="thread" className="stack no-print measure" aria-labelledby="thread-title">
      <h2 id="thread-title">{threadWords.title[reader]}</h2>
      {reader === 'student' && <p className="soft">{threadWords.lead}</p>}
      {reader === 'coach' && lines.length === 0 && <p className="soft">{threadWords.none}</p>}
      <ol className={styles.lines} aria-live="polite">
        {lines.map((line) => (
          <li key={line.id} data-voice={line.voice}>
            <p className="soft small">
              {line.voice === reader && reader === 'student' ? threadWords.you : line.name},{' '}
              <When at={line.at} />
            </p>
            <p className={styles.words}>{line.words}</p>
          </li>
        ))}
      </ol>
      {mayWrite && (
        <form onSubmit={send} className="stack tight" method="post">
          <label className="field">
            <span>{reader === 'student' ? threadWords.ask : threadWords.answer}</span>
            <textarea
              required
              maxLength={1000}
              rows={3}
              value={words}
              onChange={(event) => setWords(event.target.value)}
            />
          </label>
          <p className="hint">{threadWords.pain}</p>
          <TroubleNote trouble={sending.trouble} />
          <button type="submit" disabled={sending.busy || words.trim() === ''}>
            {sending.busy ? threadWords.busy : threadWords.send[reader]}
          </button>
        </form>
      )}
    </section>
  );
}
