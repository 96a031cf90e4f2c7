'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { FilmLink } from '../../../../teaching-clip/film-link.tsx';
import { faultsWords } from '../../../../words/faults.ts';
import { ClipForm } from './clip-form.tsx';
import styles from './faults.module.css';

type Clip = Reply<'listTeachingClips'>['items'][number];
type Props = { clips: readonly Clip[]; onClips: (clips: Clip[]) => void };

/** The academy's films, one a cause: kept, changed and taken away. */
export function TeachingClips({ clips, onClips }: Props) {
  const [edited, setEdited] = useState<Clip | null>(null);
  const { busy, trouble, run } = useSending();
  const remove = async ({ cause }: Clip) => {
    const params = { path: { cause } };
    const done = await run(() => answerOf(api.DELETE('/api/library/teaching-clips/{cause}', { params })));
    if (done !== null) onClips(done.answer.items);
  };
  return (
    <section className="stack ruled" aria-labelledby="clips-title">
      <div className="stack tight measure">
        <h2 id="clips-title">{faultsWords.clipsTitle}</h2>
        <p className="soft">{faultsWords.clipsLead}</p>
      </div>
      {clips.length === 0 ? (
        <p>{faultsWords.clipsNone}</p>
      ) : (
        <ul className={styles.clips}>
          {clips.map((clip) => (
            <li key={clip.cause} className={styles.clip}>
              <span className="stack">
                <strong>{clip.causeName}</strong>
                <span>
                  <FilmLink clip={clip} />
                </span>
                {clip.words !== '' && <span className="small">{clip.words}</span>}
              </span>
              <span className="row">
                <button
                  type="button"
                  className="small-button"
                  aria-label={faultsWords.changeFor(clip.causeName)}
                  onClick={() => setEdited(clip)}
                >
                  {faultsWords.changeIt}
                </button>
                <button
                  type="button"
                  className="plain small-button"
                  disabled={busy}
                  aria-label={faultsWords.removeFor(clip.causeName)}
                  onClick={() => void remove(clip)}
                >
                  {faultsWords.remove}
                </button>
              </span>
            </li>
          ))}
        </ul>
      )}
      <TroubleNote trouble={trouble} />
      <ClipForm key={edited?.cause ?? ''} edited={edited} onClips={onClips} onDone={() => setEdited(null)} />
    </section>
  );
}
