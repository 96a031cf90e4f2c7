'use client';
import { answerOf } from '@ballfirst/contracts/client';
import Link from 'next/link';
import type { FormEvent } from 'react';
import { api } from '../../../http/browser-api.ts';
import { useLinkToken } from '../../../http/link-token.ts';
import { useSending } from '../../../http/use-sending.ts';
import { PasswordField } from '../../../shell/password-field.tsx';
import { TroubleNote } from '../../../shell/trouble-note.tsx';
import { resetWords } from '../../../words/accounts.ts';

function AskAgain() {
  return (
    <p>
      <Link href="/forgotten">{resetWords.ask}</Link>
    </p>
  );
}

export function ResetForm() {
  const token = useLinkToken();
  const sending = useSending();
  if (token === undefined) return null;
  if (token === null) {
    return (
      <div className="stack">
        <p>{resetWords.noLink}</p>
        <AskAgain />
      </div>
    );
  }

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const password = String(new FormData(event.currentTarget).get('password') ?? '');
    const done = await sending.run(() =>
      answerOf(api.POST('/api/password/reset', { body: { token, password } })),
    );
    if (done !== null) window.location.assign('/');
  };
  return (
    <form onSubmit={submit} className="stack" method="post">
      <p>{resetWords.lead}</p>
      <PasswordField label={resetWords.password} hint={resetWords.passwordHint} kind="new-password" />
      <TroubleNote trouble={sending.trouble} />
      {sending.trouble?.code === 'link-used-up' && <AskAgain />}
      <button type="submit" className="main" disabled={sending.busy}>
        {sending.busy ? resetWords.busy : resetWords.go}
      </button>
    </form>
  );
}
