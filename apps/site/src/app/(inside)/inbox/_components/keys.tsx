'use client';
import { useEffect, useRef, useState } from 'react';
import { useKeys } from '../../../../shell/use-keys.ts';
import { inboxWords } from '../../../../words/inbox.ts';
import styles from './inbox.module.css';

type Props = { on: boolean; setOn: (on: boolean) => void };

/** The sheet of keys, by its button or by its key, and the switch that turns them off. */
export function Keys({ on, setOn }: Props) {
  const [open, setOpen] = useState(false);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  useKeys((event) => {
    if (event.key !== '?' || event.altKey) return false;
    setOpen((now) => !now);
    return true;
  }, on);
  return (
    <>
      <button type="button" className={`plain ${styles.keysButton}`} onClick={() => setOpen(true)}>
        {inboxWords.keysTitle}
      </button>
      <dialog
        ref={dialog}
        className={styles.keys}
        aria-labelledby="keys-title"
        onClose={() => setOpen(false)}
        onKeyDown={(event) => event.key === '?' && setOpen(false)}
      >
        <div className="stack">
          <h2 id="keys-title">{inboxWords.keysTitle}</h2>
          <dl className={styles.keyList}>
            {inboxWords.keys.map(([key, does]) => (
              <div key={key}>
                <dt>
                  <kbd>{key}</kbd>
                </dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
          <label className="choice">
            <input type="checkbox" checked={on} onChange={(event) => setOn(event.target.checked)} />
            {inboxWords.keysOn}
          </label>
          <button type="button" onClick={() => setOpen(false)}>
            {inboxWords.close}
          </button>
        </div>
      </dialog>
    </>
  );
}
