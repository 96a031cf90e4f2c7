'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { guardianWords } from '../../../../words/guardian.ts';

type Consent = Reply<'readConsent'>;
type Purposes = Consent['purposes'];
type Props = { consent: Consent; busy: boolean; onGive: (purposes: Purposes) => void };

/** The text, the purposes beyond coaching one by one, and the agreement. */
export function AgreeForm({ consent, busy, onGive }: Props) {
  const [purposes, setPurposes] = useState(consent.purposes);
  const given = consent.state === 'given';
  return (
    <div className="stack">
      <h2>{guardianWords.textTitle}</h2>
      <p>{consent.text.text}</p>
      <fieldset className="stack tight">
        <legend>{guardianWords.purposesTitle}</legend>
        {(['quality', 'teaching'] as const).map((one) => (
          <label key={one} className="choice">
            <input
              type="checkbox"
              checked={purposes[one]}
              onChange={(event) => setPurposes((now) => ({ ...now, [one]: event.target.checked }))}
            />
            {guardianWords[one]}
          </label>
        ))}
      </fieldset>
      <button type="button" className="main" disabled={busy} onClick={() => onGive(purposes)}>
        {busy ? guardianWords.busy : given ? guardianWords.keep : guardianWords.agree}
      </button>
    </div>
  );
}
