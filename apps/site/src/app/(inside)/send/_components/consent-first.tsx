'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { When } from '../../../../times/when.tsx';
import { guardianWords } from '../../../../words/guardian.ts';

type State = Reply<'readGuardian'>;
const text = (form: FormData, name: string): string => String(form.get(name) ?? '').trim();

/** In place of the form, while a junior's guardian has not consented: how it is done, and whom we write to. */
export function ConsentFirst({ first }: { first: State }) {
  const [now, setNow] = useState(first);
  const sending = useSending();
  const ask = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const body = { name: text(form, 'name'), relation: text(form, 'relation'), email: text(form, 'email') };
    const done = await sending.run(() => answerOf(api.POST('/api/me/guardian', { body })));
    if (done !== null) setNow(done.answer);
  };
  const asked = now.state === 'asked' && now.guardian !== null;
  return (
    <main id="content" className="page">
      <h1>{guardianWords.firstTitle}</h1>
      <p>{guardianWords.firstLead}</p>
      <div role="status">
        {asked && now.guardian !== null && (
          <div className="notice stack tight">
            <p>
              {guardianWords.asked(now.guardian.name, now.guardian.email)}{' '}
              {now.at !== null && <When at={now.at} />}
            </p>
            <p>{guardianWords.askedThen}</p>
          </div>
        )}
        {now.state === 'withdrawn' && <p className="notice look">{guardianWords.withdrawnForStudent}</p>}
        {now.state === 'given' && <p className="notice good">{guardianWords.givenForStudent}</p>}
      </div>
      <p>
        <a href="/send" className="button">
          {guardianWords.look}
        </a>
      </p>
      <form className="stack ruled" method="post" onSubmit={ask}>
        <h2>{asked ? guardianWords.askAgainTitle : guardianWords.askTitle}</h2>
        <label className="field">
          <span>{guardianWords.name}</span>
          <input name="name" required maxLength={120} defaultValue={now.guardian?.name ?? ''} />
        </label>
        <label className="field">
          <span>{guardianWords.relation}</span>
          <input name="relation" required maxLength={60} />
        </label>
        <label className="field">
          <span>{guardianWords.email}</span>
          <input
            type="email"
            name="email"
            required
            maxLength={254}
            defaultValue={now.guardian?.email ?? ''}
          />
        </label>
        <TroubleNote trouble={sending.trouble} />
        <button type="submit" className="main" disabled={sending.busy}>
          {sending.busy ? guardianWords.asking : guardianWords.ask}
        </button>
      </form>
    </main>
  );
}
