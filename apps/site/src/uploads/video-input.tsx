'use client';
import { useId } from 'react';
import { sendWords } from '../words/send.ts';
import { useVideoChoice } from './use-video-choice.ts';
import styles from './video-input.module.css';

/** The phone's own way to film or choose a video. Anything else is refused at once, in words. */
export function VideoInput({ label, onFile }: { label: string; onFile: (file: File) => void }) {
  const id = useId();
  const { refused, chosen } = useVideoChoice(onFile);
  return (
    <div className={styles.input}>
      <input
        id={id}
        type="file"
        accept="video/mp4,video/quicktime,.mp4,.mov,.m4v"
        className={styles.file}
        aria-describedby={`${id}-hint`}
        onChange={chosen}
      />
      <label htmlFor={id} className="button main">
        {label}
      </label>
      <p id={`${id}-hint`} className="hint">
        {sendWords.chooseHint}
      </p>
      <div role="alert">{refused && <p className="notice look">{sendWords.notVideo}</p>}</div>
    </div>
  );
}
