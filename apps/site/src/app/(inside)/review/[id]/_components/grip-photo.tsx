'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useRef, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useWhileLooking } from '../../../../../http/use-while-looking.ts';
import { gripWords } from '../../../../../words/grip.ts';
import styles from './grip-photo.module.css';

type Photo = NonNullable<Reply<'readGripPhotoOfSwing'>['photo']>;

/** A student may add or change it until the answer: it is asked for again while the page is looked at. */
const everyMs = 20_000;

/** The photo of the hands that came with the swing, and the same as large as the screen; nothing where none came. */
export function GripPhoto({ submissionId, name }: { submissionId: string; name: string }) {
  const [found, setFound] = useState<Photo | null>(null);
  const whole = useRef<HTMLDialogElement>(null);
  const ask = useCallback(async () => {
    const params = { path: { id: submissionId } };
    const answer = await answerOf(api.GET('/api/submissions/{id}/grip-photo', { params })).catch(() => null);
    if (answer !== null) setFound(answer.photo);
  }, [submissionId]);
  useWhileLooking(ask, everyMs);
  if (found === null) return null;
  const { photo, picture, refusal } = found;
  const size = picture === null ? {} : { width: picture.widthPx, height: picture.heightPx };
  const described = gripWords.described(name);
  return (
    <section className={styles.grip} aria-labelledby="grip-title">
      <h3 id="grip-title" className={styles.name}>
        {gripWords.deskTitle}
      </h3>
      {photo === null ? (
        <p className="soft small">{refusal === null ? gripWords.deskComing : gripWords.deskRefused}</p>
      ) : (
        <>
          <picture>
            <img src={photo} alt={described} {...size} className={styles.small} />
          </picture>
          <p>
            <button type="button" className="small-button" onClick={() => whole.current?.showModal()}>
              {gripWords.larger}
            </button>
          </p>
          <dialog ref={whole} className={styles.whole} aria-label={described}>
            <picture>
              <img src={photo} alt={described} {...size} />
            </picture>
            <p>
              <button type="button" onClick={() => whole.current?.close()}>
                {gripWords.close}
              </button>
            </p>
          </dialog>
        </>
      )}
    </section>
  );
}
