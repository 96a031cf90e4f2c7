import { joinWords } from '../../../../words/sign-in.ts';

/** A junior's guardian comes first: who, and the consent to a text that is read here. */
export function GuardianFields({ text }: { text: string }) {
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
      <p className="small">{text}</p>
      <label className="choice">
        <input type="checkbox" name="consents" required />
        {joinWords.consents}
      </label>
    </fieldset>
  );
}
