'use client';
import { type OfferedPhrase, searchPhrases } from '@ballfirst/practice/offer-phrases';
import { useState } from 'react';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import type { Phrase } from './phrase-help.ts';
import styles from './phrase-picker.module.css';

type Props = {
  offered: readonly OfferedPhrase<Phrase>[];
  canWork: boolean;
  onInsert: (text: string) => void;
  onRemove: (phrase: Phrase) => void;
};
const listId = 'phrase-list';
const optionId = (id: string): string => `phrase-${id}`;

/** The phrases that fit, filled in: searched, chosen by keys or touch, put where the cursor stands in the words. */
export function PhrasePicker({ offered, canWork, onInsert, onRemove }: Props) {
  const [search, setSearch] = useState('');
  const [at, setAt] = useState(0);
  const found = searchPhrases(offered, search);
  const held = Math.min(at, Math.max(0, found.length - 1));
  const current = found[held];
  const onKey = (event: React.KeyboardEvent) => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step !== 0 && found.length > 0) {
      event.preventDefault();
      const next = (held + step + found.length) % found.length;
      setAt(next);
      const id = found[next]?.phrase.id;
      if (id !== undefined) document.getElementById(optionId(id))?.scrollIntoView({ block: 'nearest' });
    }
    if (event.key === 'Enter' && current !== undefined) {
      event.preventDefault();
      onInsert(current.text);
    }
  };
  return (
    <div className="stack tight">
      <div className="field">
        <label htmlFor="phrase-search">{replyDeskWords.search}</label>
        <input
          id="phrase-search"
          type="search"
          role="combobox"
          aria-expanded={current !== undefined}
          aria-autocomplete="list"
          aria-describedby="phrase-hint"
          {...(current === undefined
            ? {}
            : { 'aria-controls': listId, 'aria-activedescendant': optionId(current.phrase.id) })}
          disabled={!canWork}
          value={search}
          onChange={(event) => {
            setSearch(event.target.value);
            setAt(0);
          }}
          onKeyDown={onKey}
        />
        <span id="phrase-hint" className="hint">
          {replyDeskWords.searchHint}
        </span>
      </div>
      {found.length === 0 && <p className="soft small">{replyDeskWords.noPhrase}</p>}
      {current !== undefined && (
        <div id={listId} role="listbox" aria-label={replyDeskWords.phrases} className={styles.list}>
          {found.map(({ phrase, text }, index) => (
            <div
              key={phrase.id}
              id={optionId(phrase.id)}
              role="option"
              tabIndex={-1}
              aria-selected={index === held}
              aria-disabled={!canWork}
              className={styles.phrase}
              onClick={() => canWork && onInsert(text)}
              onKeyDown={(event) => event.key === 'Enter' && canWork && onInsert(text)}
            >
              <span className="small soft">
                {phrase.about}, {replyDeskWords.whose[phrase.whose]}
              </span>
              <span>{text}</span>
            </div>
          ))}
        </div>
      )}
      {current !== undefined && current.phrase.whose !== 'library' && (
        <p>
          <button
            type="button"
            className="plain small-button"
            disabled={!canWork}
            aria-label={replyDeskWords.removePhrase(current.text)}
            onClick={() => onRemove(current.phrase)}
          >
            {replyDeskWords.remove}
          </button>
        </p>
      )}
    </div>
  );
}
