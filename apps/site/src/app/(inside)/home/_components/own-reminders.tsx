'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { ownReminderWords } from '../../../../words/settings.ts';
import { QuietHours } from './quiet-hours.tsx';

type Choice = Reply<'readReminders'>;

/** The student's own switch for reminders and the hours without any; it shows once it is known how they stand. */
export function OwnReminders() {
  const [choice, setChoice] = useState<Choice | null>(null);
  const { busy, trouble, run } = useSending();

  useEffect(() => {
    void run(() => answerOf(api.GET('/api/me/reminders'))).then(
      (done) => done !== null && setChoice(done.answer),
    );
  }, [run]);

  /** Shown at once; as it was before where it could not be kept. */
  const choose = async (body: Choice): Promise<boolean> => {
    const before = choice;
    setChoice(body);
    const done = await run(() => answerOf(api.PUT('/api/me/reminders', { body })));
    setChoice(done === null ? before : done.answer);
    return done !== null;
  };
  if (choice === null) return null;
  return (
    <section className="stack tight">
      <h2>{ownReminderWords.title}</h2>
      <label className="choice">
        <input
          type="checkbox"
          checked={choice.reminders}
          disabled={busy}
          onChange={(event) => void choose({ ...choice, reminders: event.target.checked })}
        />
        {ownReminderWords.label}
      </label>
      <p className="hint">{ownReminderWords.hint}</p>
      <QuietHours quiet={choice.quiet} busy={busy} onChoose={(quiet) => choose({ ...choice, quiet })} />
      <TroubleNote trouble={trouble} />
    </section>
  );
}
