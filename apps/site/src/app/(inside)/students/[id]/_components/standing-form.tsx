'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { standingNames } from '../../../../../words/names.ts';
import { studentWords } from '../../../../../words/students.ts';
import styles from './student.module.css';

type Student = Reply<'readStudent'>;
const order = ['paid', 'trial', 'paused', 'lapsed', 'left'] as const;

/** A manager's change of standing, kept in the history with its reason. */
export function StandingForm({
  student,
  onChanged,
}: {
  student: Student;
  onChanged: (now: Student) => void;
}) {
  const others = order.filter((one) => one !== student.standing);
  const [chosen, setChosen] = useState<Student['standing'] | null>(null);
  const [reason, setReason] = useState('');
  const [done, setDone] = useState<string | null>(null);
  const { busy, trouble, run } = useSending();
  const once = useOnceKey();
  const to = others.find((one) => one === chosen) ?? others[0] ?? 'paid';

  const change = async (event: FormEvent) => {
    event.preventDefault();
    setDone(null);
    const body = { to, reason };
    const params = { path: { id: student.id }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const changed = await run(() => answerOf(api.POST('/api/students/{id}/standing', { params, body })));
    if (changed === null) return;
    once.answered();
    setReason('');
    setDone(studentWords.changed(changed.answer.name, standingNames[changed.answer.standing]));
    onChanged(changed.answer);
  };

  return (
    <form className="stack ruled" aria-labelledby="standing-form-title" onSubmit={change}>
      <h2 id="standing-form-title">{studentWords.change}</h2>
      <div className={styles.form}>
        <SelectField
          label={studentWords.changeTo}
          names={standingNames}
          order={others}
          value={to}
          onChange={setChosen}
        />
        <label className="field">
          <span>{studentWords.reason}</span>
          <input value={reason} maxLength={300} onChange={(event) => setReason(event.target.value)} />
          <span className="hint">{studentWords.reasonHint}</span>
        </label>
      </div>
      <TroubleNote trouble={trouble} />
      <p>
        <button type="submit" disabled={busy}>
          {busy ? studentWords.changing : studentWords.changeGo}
        </button>
      </p>
      <p role="status">{done}</p>
    </form>
  );
}
