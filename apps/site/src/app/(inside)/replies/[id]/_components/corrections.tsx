'use client';
import { answerOf, ifMatch, type Reply } from '@ballfirst/contracts/client';
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { When } from '../../../../../times/when.tsx';
import { replyWords } from '../../../../../words/reply.ts';
import styles from './reply.module.css';

type Props = { reply: Reply<'readReply'>; mayCorrect: boolean };

/** What the reply said before, and for a coach the way to put its words right. */
export function Corrections({ reply, mayCorrect }: Props) {
  const { earlier, correctedAt } = reply;
  if (correctedAt === null && !mayCorrect) return null;
  return (
    <section className="stack tight no-print measure" aria-label={replyWords.corrections}>
      {correctedAt !== null && (
        <details>
          <summary>
            {replyWords.corrected} <When at={correctedAt} />
          </summary>
          {earlier.map(({ words, at }) => (
            <div key={at}>
              <p className="soft small">
                {replyWords.before} <When at={at} />
              </p>
              <p className={styles.words}>{words}</p>
            </div>
          ))}
        </details>
      )}
      {mayCorrect && <CorrectForm reply={reply} />}
    </section>
  );
}

function CorrectForm({ reply }: { reply: Reply<'readReply'> }) {
  const [open, setOpen] = useState(false);
  const sending = useSending();
  const router = useRouter();
  const correct = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const words = String(new FormData(event.currentTarget).get('words') ?? '').trim();
    const params = { path: { id: reply.id }, header: { 'If-Match': ifMatch(reply.version) } };
    const done = await sending.run(() =>
      answerOf(api.PUT('/api/replies/{id}/words', { params, body: { words } })),
    );
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
