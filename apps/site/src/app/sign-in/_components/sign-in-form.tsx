'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { type FormEvent, useState } from 'react';
import { api } from '../../../http/browser-api.ts';
import { useSending } from '../../../http/use-sending.ts';
import { TroubleNote } from '../../../shell/trouble-note.tsx';
import { forgottenWords } from '../../../words/accounts.ts';
import { signInWords } from '../../../words/sign-in.ts';
import { ChooseAcademy } from './choose-academy.tsx';

export function SignInForm({ next }: { next: string }) {
  const [email, setEmail] = useState('');
  const [password, setPassword] = useState('');
  const [me, setMe] = useState<Reply<'readMe'> | null>(null);
  const sending = useSending();

  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const done = await sending.run(() =>
      answerOf(api.POST('/api/sign-in', { body: { email: email.trim(), password } })),
    );
    if (done === null) return;
    if (done.answer.academy === null) setMe(done.answer);
    else window.location.assign(next);
  };

  if (me !== null) return <ChooseAcademy academies={me.academies} current={null} next={next} />;
  return (
    <form onSubmit={submit} className="stack" method="post">
      <h1>{signInWords.title}</h1>
      {next !== '/' && <p className="hint">{signInWords.back}</p>}
      <label className="field">
        <span>{signInWords.email}</span>
        <input
          type="email"
          name="email"
          autoComplete="username"
          required
          value={email}
          onChange={(event) => setEmail(event.target.value)}
        />
      </label>
      <label className="field">
        <span>{signInWords.password}</span>
        <input
          type="password"
          name="password"
          autoComplete="current-password"
          required
          value={password}
          onChange={(event) => setPassword(event.target.value)}
        />
      </label>
      <TroubleNote trouble={sending.trouble === null ? null : { ...sending.trouble, code: null }} />
      <button type="submit" className="main" disabled={sending.busy}>
        {sending.busy ? signInWords.busy : signInWords.go}
      </button>
      <p>
        <Link href="/forgotten">{forgottenWords.link}</Link>
      </p>
    </form>
  );
}
