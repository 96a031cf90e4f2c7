'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../http/use-once-key.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { extendWords } from '../../../../words/coaches.ts';
import styles from './trials.module.css';

type Props = {
  student: { readonly id: string; readonly name: string };
  onExtended: (detail: Reply<'extendTrial'>) => void;
};

/** Gives a trial more days, with a reason that stays in the history. */
export function ExtendTrial({ student, onExtended }: Props) {
  const [asking, setAsking] = useState(false);
  const { busy, trouble, run } = useSending();
  const once = useOnceKey();

  const extend = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const body = { days: Number(form.get('days')), reason: String(form.get('reason') ?? '').trim() };
    const params = { path: { id: student.id }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await run(() => answerOf(api.POST('/api/students/{id}/trial', { params, body })));
    if (done === null) return;
    once.answered();
    setAsking(false);
    onExtended(done.answer);
  };

  if (!asking) {
    return (
      <button type="button" className="plain" onClick={() => setAsking(true)}>
        <span aria-hidden="true">{extendWords.open}</span>
        <span className="unseen">{extendWords.openFor(student.name)}</span>
      </button>
    );
  }
  return (
    <form className={`notice stack tight ${styles.asking}`} onSubmit={extend} method="post">
      <p>
        <strong>{extendWords.title(student.name)}</strong>
      </p>
      <label className="field">
        <span>{extendWords.days}</span>
        <input name="days" type="number" min={1} max={60} defaultValue={7} required />
      </label>
      <label className="field">
        <span>{extendWords.reason}</span>
        <input name="reason" maxLength={300} defaultValue={extendWords.reasonFirst} required />
      </label>
      <TroubleNote trouble={trouble} />
      <div className="row">
        <button type="submit" className="main" disabled={busy}>
          {busy ? extendWords.busy : extendWords.go}
        </button>
        <button type="button" className="plain" disabled={busy} onClick={() => setAsking(false)}>
          {extendWords.back}
        </button>
      </div>
    </form>
  );
}
