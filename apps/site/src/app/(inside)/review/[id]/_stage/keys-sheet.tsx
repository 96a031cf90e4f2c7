'use client';
import { useEffect, useRef } from 'react';
import { stageWords } from '../../../../../words/stage.ts';
import styles from './keys-sheet.module.css';

type Props = { open: boolean; setOpen: (open: boolean) => void; on: boolean; setOn: (on: boolean) => void };

/** The sheet of keys, and the switch that turns them off. */
export function KeysSheet({ open, setOpen, on, setOn }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  return (
    <dialog
      ref={dialog}
      className={styles.sheet}
      aria-labelledby="stage-keys-title"
      onClose={() => setOpen(false)}
      onKeyDown={(event) => event.key === '?' && setOpen(false)}
    >
      <div className="stack">
        <h2 id="stage-keys-title">{stageWords.keysTitle}</h2>
        <div className={styles.groups}>
          {stageWords.keyGroups.map(({ title, keys }) => (
            <section key={title}>
              <h3>{title}</h3>
              <dl>
                {keys.map(([key, does]) => (
                  <div key={key}>
                    <dt>
                      <kbd>{key}</kbd>
                    </dt>
                    <dd>{does}</dd>
                  </div>
                ))}
              </dl>
            </section>
          ))}
        </div>
        <label className="choice">
          <input type="checkbox" checked={on} onChange={(event) => setOn(event.target.checked)} />
          {stageWords.keysOn}
        </label>
        <button type="button" onClick={() => setOpen(false)}>
          {stageWords.close}
        </button>
      </div>
    </dialog>
  );
}
