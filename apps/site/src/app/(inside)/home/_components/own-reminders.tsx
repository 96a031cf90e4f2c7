'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { ownReminderWords } from '../../../../words/settings.ts';

/** The student's own switch for reminders; it shows once it is known how it stands. */
export function OwnReminders() {
  const [on, setOn] = useState<boolean | null>(null);
  const { busy, trouble, run } = useSending();

  useEffect(() => {
    void run(() => answerOf(api.GET('/api/me/reminders'))).then(
      (done) => done !== null && setOn(done.answer.reminders),
    );
  }, [run]);

  const choose = async (reminders: boolean) => {
    const done = await run(() => answerOf(api.PUT('/api/me/reminders', { body: { reminders } })));
    if (done !== null) setOn(done.answer.reminders);
  };
  if (on === null) return null;
  return (
    <section className="stack tight">
      <h2>{ownReminderWords.title}</h2>
      <label className="choice">
        <input
          type="checkbox"
          checked={on}
          disabled={busy}
          onChange={(event) => choose(event.target.checked)}
        />
        {ownReminderWords.label}
      </label>
      <p className="hint">{ownReminderWords.hint}</p>
      <TroubleNote trouble={trouble} />
    </section>
  );
}
