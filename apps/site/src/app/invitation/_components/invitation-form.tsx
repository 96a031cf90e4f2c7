'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { type FormEvent, useEffect, useState } from 'react';
import { api } from '../../../http/browser-api.ts';
import { useLinkToken } from '../../../http/link-token.ts';
import { useSending } from '../../../http/use-sending.ts';
import { PasswordField } from '../../../shell/password-field.tsx';
import { TroubleNote } from '../../../shell/trouble-note.tsx';
import { invitationWords } from '../../../words/accounts.ts';

export function InvitationForm() {
  const token = useLinkToken();
  const [offer, setOffer] = useState<Reply<'readInvitation'> | null>(null);
  const { busy, trouble, run } = useSending();

  useEffect(() => {
    if (typeof token !== 'string') return;
    void run(() => answerOf(api.POST('/api/invitations/read', { body: { token } }))).then(
      (done) => done !== null && setOffer(done.answer),
    );
  }, [token, run]);

  if (token === null) return <p>{invitationWords.noLink}</p>;
  if (token === undefined || offer === null) {
    return trouble === null ? (
      <p role="status">{invitationWords.reading}</p>
    ) : (
      <div className="stack">
        <TroubleNote trouble={trouble} />
        <p>
          {invitationWords.accepted} <Link href="/sign-in">{invitationWords.signIn}</Link>
        </p>
      </div>
    );
  }

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const body = {
      token,
      name: String(form.get('name') ?? ''),
      password: String(form.get('password') ?? ''),
    };
    const done = await run(() => answerOf(api.POST('/api/invitations/accept', { body })));
    if (done !== null) window.location.assign('/');
  };
  return (
    <form onSubmit={submit} className="stack" method="post">
      <p>{invitationWords.offer(offer.academyName, offer.role)}</p>
      <p className="soft">{offer.known ? invitationWords.known : invitationWords.under(offer.email)}</p>
      <input type="hidden" name="username" autoComplete="username" defaultValue={offer.email} />
      <label className="field">
        <span>{invitationWords.name}</span>
        <input name="name" autoComplete="name" required maxLength={120} defaultValue={offer.name} />
      </label>
      <PasswordField
        label={offer.known ? invitationWords.knownPassword : invitationWords.password}
        hint={offer.known ? null : invitationWords.passwordHint}
        kind={offer.known ? 'current-password' : 'new-password'}
      />
      <TroubleNote trouble={trouble === null ? null : { ...trouble, code: null }} />
      <button type="submit" className="main" disabled={busy}>
        {busy ? invitationWords.busy : invitationWords.go}
      </button>
    </form>
  );
}
