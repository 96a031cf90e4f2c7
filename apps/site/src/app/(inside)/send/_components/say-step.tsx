'use client';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { sendWords } from '../../../../words/send.ts';
import type { Draft } from './draft.ts';

type Props = { draft: Draft; change: (next: (draft: Draft) => Draft) => void };

/** Step three: a word for the coach, and whether anything hurts. */
export function SayStep({ draft, change }: Props) {
  const hurts = draft.pain === 'new' || draft.pain === 'worse';
  return (
    <div className="stack">
      <div className="field">
        <label htmlFor="note">{sendWords.note}</label>
        <textarea
          id="note"
          maxLength={1000}
          value={draft.note}
          aria-describedby="note-hint"
          onChange={(event) => change((now) => ({ ...now, note: event.target.value }))}
        />
        <span id="note-hint" className="hint">
          {sendWords.noteHint}
        </span>
      </div>
      <RadioRow
        legend={sendWords.pain}
        names={sendWords.painChoices}
        order={['none', 'new', 'worse']}
        value={draft.pain}
        onChange={(pain) => change((now) => ({ ...now, pain }))}
      />
      <div role="alert">{hurts && <p className="notice safety">{sendWords.painCaution}</p>}</div>
      {hurts && (
        <label className="field">
          <span>{sendWords.painNote}</span>
          <textarea
            maxLength={500}
            value={draft.painNote}
            onChange={(event) => change((now) => ({ ...now, painNote: event.target.value }))}
          />
        </label>
      )}
    </div>
  );
}
