'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { settingsWords } from '../../../../words/settings.ts';
import styles from '../settings.module.css';

type Rules = Reply<'readReminderRules'>;

/** One switch a reminder; each is saved at once. */
export function ReminderRules({ first }: { first: Rules }) {
  const [rules, setRules] = useState(first);
  const { busy, trouble, run } = useSending();

  const turn = async (kind: Rules['items'][number]['kind'], on: boolean) => {
    const done = await run(() =>
      answerOf(api.PUT('/api/settings/reminders/{kind}', { params: { path: { kind } }, body: { on } })),
    );
    if (done !== null) setRules(done.answer);
  };
  return (
    <>
      <ul className={styles.rules}>
        {rules.items.map(({ kind, on }) => (
          <li key={kind}>
            <label className={styles.rule}>
              <input
                type="checkbox"
                checked={on}
                disabled={busy}
                onChange={(event) => turn(kind, event.target.checked)}
              />
              <span>
                <strong>{settingsWords.reminders.kinds[kind][0]}</strong>
                <span>{settingsWords.reminders.kinds[kind][1]}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      <TroubleNote trouble={trouble} />
    </>
  );
}
