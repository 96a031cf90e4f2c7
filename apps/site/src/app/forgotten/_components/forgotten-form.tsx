'use client';
import { answerOf } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { type FormEvent, useState } from 'react';
import { api } from '../../../http/browser-api.ts';
import { useSending } from '../../../http/use-sending.ts';
import { TroubleNote } from '../../../shell/trouble-note.tsx';
import { forgottenWords } from '../../../words/accounts.ts';

export function ForgottenForm() {
  const [sent, setSent] = useState(false);
  const sending = useSending();

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const email = String(new FormData(event.currentTarget).get('email') ?? '').trim();
    const done = await sending.run(() => answerOf(api.POST('/api/password/forgotten', { body: { email } })));
    if (done !== null) setSent(true);
  };

  if (sent) {
    return (
      <div className="stack" role="status">
        <h1>{forgottenWords.sent}</h1>
        <p>{forgottenWords.sentText}</p>
        <p>
          <button type="button" className="plain" onClick={() => setSent(false)}>
            {forgottenWords.again}
          </button>
        </p>
        <p>
          <Link href="/sign-in">{forgottenWords.back}</Link>
        </p>
      </div>
    );
  }
  return (
    <form onSubmit={submit} className="stack" method="post">
      <h1>{forgottenWords.title}</h1>
      <p>{forgottenWords.lead}</p>
      <label className="field">
        <span>{forgottenWords.email}</span>
        <input type="email" name="email" autoComplete="username" required maxLength={254} />
      </label>
      <TroubleNote trouble={sending.trouble} />
      <button type="submit" className="main" disabled={sending.busy}>
        {sending.busy ? forgottenWords.busy : forgottenWords.go}
      </button>
      <p>
        <Link href="/sign-in">{forgottenWords.back}</Link>
      </p>
    </form>
  );
}
