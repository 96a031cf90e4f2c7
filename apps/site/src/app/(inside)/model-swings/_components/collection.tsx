'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { localDateInWords } from '../../../../weeks/local-day.ts';
import { collectionWords } from '../../../../words/compare.ts';
import { clubNames, viewNames } from '../../../../words/names.ts';
import styles from './collection.module.css';

type Model = Reply<'listModelSwings'>['items'][number];

/** The collection: what may be shown, with whose permission, and the way to take it out. */
export function Collection({ first }: { first: readonly Model[] }) {
  const [items, setItems] = useState(first);
  const sending = useSending();
  const end = async (clipId: string) => {
    const params = { path: { id: clipId } };
    const done = await sending.run(() => answerOf(api.DELETE('/api/clips/{id}/model-swing', { params })));
    if (done !== null) setItems((now) => now.filter((one) => one.clipId !== clipId));
  };
  return (
    <>
      <TroubleNote trouble={sending.trouble} />
      {items.length === 0 && <p>{collectionWords.empty}</p>}
      <ul className={styles.list} aria-label={collectionWords.title}>
        {items.map((one) => (
          <li key={one.clipId} className={styles.model}>
            {one.poster !== null && (
              <img src={one.poster} alt="" width={96} height={170} className={styles.poster} />
            )}
            <div className="stack tight">
              <h2>{one.name}</h2>
              <p className="small">
                {one.player}, {clubNames[one.club].toLowerCase()}, {viewNames[one.view].toLowerCase()}
              </p>
              <p>
                {collectionWords.permission}: {one.permission}
              </p>
              <p className="small soft">
                {collectionWords.permittedOn} {localDateInWords(one.permittedOn)}.{' '}
                {collectionWords.kept(one.keptBy)}.
              </p>
              <p>
                <button
                  type="button"
                  className="small-button"
                  disabled={sending.busy}
                  aria-label={collectionWords.endAsk(one.name)}
                  onClick={() => end(one.clipId)}
                >
                  {collectionWords.end}
                </button>
              </p>
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}
