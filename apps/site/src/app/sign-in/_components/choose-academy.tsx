'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../http/browser-api.ts';
import { useSending } from '../../../http/use-sending.ts';
import { TroubleNote } from '../../../shell/trouble-note.tsx';
import { roleNames } from '../../../words/names.ts';
import { signInWords } from '../../../words/sign-in.ts';

type Academies = Reply<'readMe'>['academies'];
type Props = { academies: Academies; current: string | null; next: string };

/** A person of several academies chooses the one to work in. */
export function ChooseAcademy({ academies, current, next }: Props) {
  const [chosen, setChosen] = useState(current ?? academies[0]?.id ?? '');
  const sending = useSending();
  const open = async () => {
    const done = await sending.run(() =>
      answerOf(api.PUT('/api/me/academy', { body: { academyId: chosen } })),
    );
    if (done !== null) window.location.assign(current === null ? next : '/');
  };
  return (
    <div className="stack">
      <h1>{signInWords.chooseTitle}</h1>
      <p>{signInWords.chooseText}</p>
      <fieldset className="stack tight">
        <legend className="unseen">{signInWords.chooseTitle}</legend>
        {academies.map((academy) => (
          <label key={academy.id} className="choice">
            <input
              type="radio"
              name="academy"
              checked={chosen === academy.id}
              onChange={() => setChosen(academy.id)}
            />
            <span>
              {academy.name} <span className="soft">{roleNames[academy.role]}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <TroubleNote trouble={sending.trouble} />
      <button type="button" className="main" onClick={open} disabled={sending.busy || chosen === ''}>
        {signInWords.choose}
      </button>
    </div>
  );
}
