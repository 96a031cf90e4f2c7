'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { templateOf } from '@ballfirst/practice/template-of';
import { useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import { type PhraseFactsHere, valuesHere } from './phrase-help.ts';

type Props = {
  help: PhraseFactsHere;
  cause: string | null;
  drillName: string | null;
  /** What is selected in the words of the reply. */
  selected: () => string;
  onKept: () => void;
};

/** Keeps a phrase for oneself or for all: names and values of this swing become variables. */
export function PhraseKeep({ help, cause, drillName, selected, onKept }: Props) {
  const [text, setText] = useState('');
  const [about, setAbout] = useState('');
  const [whose, setWhose] = useState<'own' | 'academy'>('own');
  const sending = useSending();
  const once = useOnceKey();
  const { hand } = help.submission.student;
  const take = () => setText(templateOf(selected(), valuesHere(help, { cause, drillName }), hand));
  const keep = async () => {
    const body = { about, text, whose };
    const header = { 'Idempotency-Key': once.keyFor(body) };
    const done = await sending.run(() => answerOf(api.POST('/api/phrases', { params: { header }, body })));
    if (done === null) return;
    once.answered();
    setText('');
    setAbout('');
    onKept();
  };
  return (
    <details>
      <summary>{replyDeskWords.keepPhrase}</summary>
      <div className="stack tight">
        <p className="hint">{replyDeskWords.keepHint}</p>
        <p>
          <button type="button" className="small-button" onClick={take}>
            {replyDeskWords.takeSelected}
          </button>
        </p>
        <label className="field">
          <span>{replyDeskWords.phraseText}</span>
          <textarea maxLength={1000} value={text} onChange={(event) => setText(event.target.value)} />
        </label>
        <label className="field">
          <span>{replyDeskWords.phraseAbout}</span>
          <input maxLength={60} value={about} onChange={(event) => setAbout(event.target.value)} />
        </label>
        <SelectField
          label={replyDeskWords.keepFor}
          names={replyDeskWords.keepForNames}
          order={['own', 'academy'] as const}
          value={whose}
          onChange={setWhose}
        />
        <TroubleNote trouble={sending.trouble} />
        <p>
          <button
            type="button"
            disabled={sending.busy || text.trim() === '' || about.trim() === ''}
            onClick={keep}
          >
            {replyDeskWords.keepGo}
          </button>
        </p>
      </div>
    </details>
  );
}
