'use client';
import { useId } from 'react';
import { useVideoChoice } from '../../../../uploads/use-video-choice.ts';
import { lookWords } from '../../../../words/look.ts';
import styles from './look.module.css';

/** The phone's camera, or a video it has already. */
export function LocalInput({ again, onFile }: { again: boolean; onFile: (file: File) => void }) {
  const id = useId();
  const { refused, chosen } = useVideoChoice(onFile);
  return (
    <div className="stack tight">
      <div className="row">
        <span className={styles.input}>
          <input
            id={`${id}-film`}
            type="file"
            accept="video/*"
            capture="environment"
            className={styles.file}
            onChange={chosen}
          />
          <label htmlFor={`${id}-film`} className={again ? 'button' : 'button main'}>
            {lookWords.film}
          </label>
        </span>
        <span className={styles.input}>
          <input id={`${id}-choose`} type="file" accept="video/*" className={styles.file} onChange={chosen} />
          <label htmlFor={`${id}-choose`} className="button">
            {again ? lookWords.another : lookWords.choose}
          </label>
        </span>
      </div>
      <div role="alert">{refused && <p className="notice look">{lookWords.notVideo}</p>}</div>
    </div>
  );
}
