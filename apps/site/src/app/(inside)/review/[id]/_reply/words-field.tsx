'use client';
import type { RefObject } from 'react';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './reply-editor.module.css';

type Props = {
  words: string;
  canWork: boolean;
  field: RefObject<HTMLTextAreaElement | null>;
  onWords: (words: string) => void;
};

/** The words to the student, and how many they are. */
export function WordsField({ words, canWork, field, onWords }: Props) {
  const count = words.trim().split(/\s+/).filter(Boolean).length;
  return (
    <div className="field">
      <label htmlFor="reply-words">{reviewWords.words}</label>
      <textarea
        id="reply-words"
        ref={field}
        className={styles.words}
        maxLength={4000}
        disabled={!canWork}
        value={words}
        aria-describedby="reply-count"
        onChange={(event) => onWords(event.target.value)}
      />
      <span id="reply-count" className="hint">
        {reviewWords.wordsCount(count)}
      </span>
    </div>
  );
}
