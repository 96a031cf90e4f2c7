'use client';
import { answerOf, type Body, type Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../http/use-once-key.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { ageNames, handNames } from '../../../../words/names.ts';
import { shellWords } from '../../../../words/shell.ts';
import { joinWords } from '../../../../words/sign-in.ts';
import { GuardianFields } from './guardian-fields.tsx';

type Join = Body<'joinAcademy'>;
const text = (form: FormData, name: string): string => String(form.get(name) ?? '').trim();

export function JoinForm({ academy }: { academy: Reply<'readAcademy'> }) {
  const [ageGroup, setAgeGroup] = useState<Join['ageGroup']>('adult');
  const [hand, setHand] = useState<Join['hand']>('right');
  const sending = useSending();
  const once = useOnceKey();

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const guardian =
      ageGroup === 'junior'
        ? {
            name: text(form, 'guardian-name'),
            relation: text(form, 'relation'),
            email: text(form, 'guardian-email'),
            consents: form.get('consents') !== null,
          }
        : null;
    const body: Join = {
      name: text(form, 'name'),
      email: text(form, 'email'),
      password: String(form.get('password') ?? ''),
      hand,
      ageGroup,
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      guardian,
    };
    const path = { academy: academy.slug };
    const header = { 'Idempotency-Key': once.keyFor(body) };
    const done = await sending.run(() =>
      answerOf(api.POST('/api/join/{academy}', { params: { path, header }, body })),
    );
    if (done !== null) window.location.assign('/home');
  };

  return (
    <form onSubmit={submit} className="stack" method="post">
      <label className="field">
        <span>{joinWords.name}</span>
        <input name="name" autoComplete="name" required maxLength={120} />
      </label>
      <label className="field">
        <span>{joinWords.email}</span>
        <input type="email" name="email" autoComplete="email" required maxLength={254} />
      </label>
      <div className="field">
        <label htmlFor="password">{joinWords.password}</label>
        <input
          id="password"
          type="password"
          name="password"
          autoComplete="new-password"
          required
          minLength={10}
          maxLength={200}
          aria-describedby="password-hint"
        />
        <span id="password-hint" className="hint">
          {joinWords.passwordHint}
        </span>
      </div>
      <fieldset>
        <legend>{joinWords.hand}</legend>
        <div className="choices">
          {(['right', 'left'] as const).map((one) => (
            <label key={one} className="choice">
              <input type="radio" name="hand" checked={hand === one} onChange={() => setHand(one)} />
              {handNames[one]}
            </label>
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend>{joinWords.age}</legend>
        <div className="choices">
          {(['adult', 'junior', 'senior'] as const).map((one) => (
            <label key={one} className="choice">
              <input type="radio" name="age" checked={ageGroup === one} onChange={() => setAgeGroup(one)} />
              {ageNames[one]}
            </label>
          ))}
        </div>
      </fieldset>
      {ageGroup === 'junior' && <GuardianFields text={academy.consentText.text} />}
      {ageGroup !== 'junior' && (
        <details>
          <summary>{joinWords.consentTitle}</summary>
          <p>{academy.consentText.text}</p>
        </details>
      )}
      <TroubleNote trouble={sending.trouble} />
      <button type="submit" className="main" disabled={sending.busy}>
        {sending.busy ? joinWords.busy : joinWords.go}
      </button>
      <p className="hint">
        {joinWords.have} <Link href="/sign-in">{shellWords.signIn}</Link>
      </p>
    </form>
  );
}
