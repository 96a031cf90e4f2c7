'use client';
import { useState } from 'react';
import { joinWords } from '../../../../words/sign-in.ts';

/** A junior's guardian comes first: who, and the consent here or by a letter. */
export function GuardianFields({ text }: { text: string }) {
  const [beside, setBeside] = useState(true);
  return (
    <fieldset className="stack notice">
      <legend className="unseen">{joinWords.guardianTitle}</legend>
      <h2>{joinWords.guardianTitle}</h2>
      <p>{joinWords.guardianText}</p>
      <label className="field">
        <span>{joinWords.guardianName}</span>
        <input name="guardian-name" required maxLength={120} />
      </label>
      <label className="field">
        <span>{joinWords.relation}</span>
        <input name="relation" required maxLength={60} />
      </label>
      <label className="field">
        <span>{joinWords.guardianEmail}</span>
        <input type="email" name="guardian-email" required maxLength={254} />
      </label>
      <fieldset>
        <legend>{joinWords.guardianWhere}</legend>
        <div className="choices">
          {([true, false] as const).map((here) => (
            <label key={String(here)} className="choice">
              <input
                type="radio"
                name="guardian-where"
                checked={beside === here}
                onChange={() => setBeside(here)}
              />
              {here ? joinWords.guardianBeside : joinWords.guardianByLetter}
            </label>
          ))}
        </div>
      </fieldset>
      {beside ? (
        <>
          <p className="small">{text}</p>
          <label className="choice">
            <input type="checkbox" name="consents" required />
            {joinWords.consents}
          </label>
        </>
      ) : (
        <p className="hint">{joinWords.guardianLetterHint}</p>
      )}
    </fieldset>
  );
}
