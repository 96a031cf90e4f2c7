'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect, useRef, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../http/use-once-key.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { trialsWords } from '../../../../words/trials.ts';
import styles from './trials.module.css';

type Props = { student: { readonly id: string; readonly name: string }; onPaid: () => void };

/** Turns a trial into a paying student, after asking once more. */
export function SetPaid({ student, onPaid }: Props) {
  const [asking, setAsking] = useState(false);
  const [reason, setReason] = useState<string>(trialsWords.reasonFirst);
  const { busy, trouble, run } = useSending();
  const once = useOnceKey();
  const yes = useRef<HTMLButtonElement>(null);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (asking) yes.current?.focus();
  }, [asking]);

  const set = async () => {
    const body = { to: 'paid' as const, reason };
    const params = { path: { id: student.id }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const changed = await run(() => answerOf(api.POST('/api/students/{id}/standing', { params, body })));
    if (changed === null) return;
    once.answered();
    onPaid();
  };
  const back = () => {
    setAsking(false);
    requestAnimationFrame(() => first.current?.focus());
  };

  if (!asking) {
    return (
      <div className={styles.paid}>
        <button ref={first} type="button" onClick={() => setAsking(true)}>
          <span aria-hidden="true">{trialsWords.setPaid}</span>
          <span className="unseen">{trialsWords.setPaidFor(student.name)}</span>
        </button>
      </div>
    );
  }
  return (
    <fieldset
      className={`notice stack tight ${styles.asking}`}
      onKeyDown={(event) => event.key === 'Escape' && back()}
    >
      <legend className={styles.ask}>{trialsWords.confirm(student.name)}</legend>
      <label className="field">
        <span>{trialsWords.reason}</span>
        <input value={reason} maxLength={300} onChange={(event) => setReason(event.target.value)} />
      </label>
      <TroubleNote trouble={trouble} />
      <div className="row">
        <button ref={yes} type="button" className="main" disabled={busy} onClick={set}>
          {busy ? trialsWords.setting : trialsWords.yes}
        </button>
        <button type="button" className="plain" disabled={busy} onClick={back}>
          {trialsWords.no}
        </button>
      </div>
    </fieldset>
  );
}
