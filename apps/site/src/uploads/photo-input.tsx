'use client';
import { type ChangeEvent, useId, useState } from 'react';
import { gripWords } from '../words/grip.ts';
import styles from './video-input.module.css';

/** As the door has it: no larger file is taken. */
const mostBytes = 20 * 1024 * 1024;
const kinds = ['image/jpeg', 'image/png', 'image/webp'];

/** Why a file is no photo that can be taken, in words; null: it can. */
export const photoTrouble = ({ name, type, size }: Pick<File, 'name' | 'type' | 'size'>): string | null => {
  if (type === 'image/heic' || type === 'image/heif' || /\.hei[cf]$/i.test(name)) return gripWords.heic;
  if (!kinds.includes(type)) return gripWords.notPhoto;
  if (size === 0) return gripWords.empty;
  return size > mostBytes ? gripWords.tooLarge : null;
};

/** The phone's own way to take or choose a photo. Anything else is refused at once, in words. */
export function PhotoInput({ label, onFile }: { label: string; onFile: (file: File) => void }) {
  const id = useId();
  const [trouble, setTrouble] = useState<string | null>(null);
  const chosen = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = '';
    if (file === undefined) return;
    const wrong = photoTrouble(file);
    setTrouble(wrong);
    if (wrong === null) onFile(file);
  };
  return (
    <div className={styles.input}>
      <input
        id={id}
        type="file"
        accept={kinds.join(',')}
        className={styles.file}
        aria-describedby={`${id}-hint`}
        onChange={chosen}
      />
      <label htmlFor={id} className="button">
        {label}
      </label>
      <p id={`${id}-hint`} className="hint">
        {gripWords.hint}
      </p>
      <div role="alert">{trouble !== null && <p className="notice look">{trouble}</p>}</div>
    </div>
  );
}
