'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { type RefObject, useMemo } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import { insertAt } from './insert-at.ts';
import { type Phrase, type PhraseFactsHere, phrasesHere } from './phrase-help.ts';
import { PhraseKeep } from './phrase-keep.tsx';
import { PhrasePicker } from './phrase-picker.tsx';

type Props = {
  help: PhraseFactsHere;
  cause: string | null;
  drillName: string | null;
  words: string;
  field: RefObject<HTMLTextAreaElement | null>;
  canWork: boolean;
  onWords: (words: string) => void;
  onPhrases: () => void;
};

/** Phrases to put into the words, and the way to keep one. */
export function PhrasesPart(props: Props) {
  const { help, cause, drillName, words, field, canWork, onWords, onPhrases } = props;
  const offered = useMemo(() => phrasesHere(help, { cause, drillName }), [help, cause, drillName]);
  const insert = (text: string) => {
    const from = field.current?.selectionStart ?? words.length;
    const to = field.current?.selectionEnd ?? words.length;
    const next = insertAt(words, text, from, to);
    onWords(next.words.slice(0, 4000));
    // After the new words are drawn the cursor stands behind the phrase, so that the next one follows it.
    requestAnimationFrame(() => field.current?.setSelectionRange(next.cursor, next.cursor));
  };
  const remove = async ({ id }: Phrase) => {
    await answerOf(api.DELETE('/api/phrases/{id}', { params: { path: { id } } })).catch(() => null);
    onPhrases();
  };
  const selected = () => {
    const { current } = field;
    return current === null ? '' : words.slice(current.selectionStart, current.selectionEnd);
  };
  return (
    <details>
      <summary>{replyDeskWords.phrases}</summary>
      <div className="stack">
        <PhrasePicker offered={offered} canWork={canWork} onInsert={insert} onRemove={remove} />
        <PhraseKeep help={help} cause={cause} drillName={drillName} selected={selected} onKept={onPhrases} />
      </div>
    </details>
  );
}
