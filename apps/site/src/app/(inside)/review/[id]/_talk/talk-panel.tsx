'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { lazy, Suspense, useState } from 'react';
import { clockOf } from '../../../../../talk-through/captions-from.ts';
import { talkWords } from '../../../../../words/talk.ts';
import { CaptionsForm } from './captions-form.tsx';
import styles from './talk.module.css';
import type { Talk } from './use-talk.ts';

const TalkPlayer = lazy(() => import('../../../../../talk-through/talk-player.tsx'));

type Clip = Reply<'readClip'>;
type Props = {
  talk: Talk;
  clip: Clip & { media: NonNullable<Clip['media']>; picture: NonNullable<Clip['picture']> };
  /** Whether it goes with the reply. */
  goes: boolean;
  canWork: boolean;
};

/** Record, stop, hear, caption, throw away: the voice that goes with the reply. */
export function TalkPanel({ talk, clip, goes, canWork }: Props) {
  const [hearing, setHearing] = useState(false);
  const { recorder, stored, taken, sending, tooShort } = talk;
  const { state, trouble, elapsedMs } = recorder;
  const button = (name: string, act: () => void, off = sending.busy) => (
    <button type="button" className="small-button" disabled={off} onClick={act}>
      {name}
    </button>
  );
  if (!canWork && stored === null) return null;
  if (state === 'recording')
    return (
      <section className={styles.panel} aria-label={talkWords.title} data-talk="recording">
        <p className={styles.live}>{talkWords.recording(clockOf(elapsedMs))}</p>
        <p className="row">
          {button(talkWords.stop, () => recorder.stop(true), false)}
          {button(talkWords.leave, () => recorder.stop(false), false)}
        </p>
      </section>
    );
  return (
    <section
      className={styles.panel}
      aria-label={talkWords.title}
      data-talk={stored === null ? 'none' : 'kept'}
    >
      {stored === null ? (
        <p className="small">{talkWords.lead}</p>
      ) : (
        <p className="small" role="status">
          {(goes ? talkWords.kept : talkWords.leftOut)(clockOf(stored.durationMs))}{' '}
          {stored.clipId !== clip.id && talkWords.otherClip}
        </p>
      )}
      <p className="row">
        {canWork &&
          button(
            state === 'asking' ? talkWords.asking : stored === null ? talkWords.record : talkWords.again,
            () => void talk.begin(),
            sending.busy || state === 'asking',
          )}
        {stored !== null &&
          stored.clipId === clip.id &&
          !hearing &&
          button(talkWords.hear(clockOf(stored.durationMs)), () => setHearing(true))}
        {canWork && stored !== null && button(talkWords.drop, () => void talk.drop())}
      </p>
      {sending.busy && taken !== null && <p role="status">{talkWords.keeping}</p>}
      {tooShort && <p role="alert">{talkWords.tooShort}</p>}
      {trouble !== null && <p role="alert">{talkWords[trouble]}</p>}
      {sending.trouble !== null && (
        <p role="alert">
          {sending.trouble.words} {taken !== null && talkWords.notKept}{' '}
          {taken !== null && button(talkWords.tryAgain, () => void talk.keepAgain())}
        </p>
      )}
      {hearing && stored !== null && stored.clipId === clip.id && (
        <Suspense fallback={<p role="status">{talkWords.opening}</p>}>
          <TalkPlayer key={stored.id} talk={{ ...stored, picture: clip.picture, media: clip.media }} />
        </Suspense>
      )}
      {canWork && stored !== null && <CaptionsForm key={stored.id} talk={talk} />}
    </section>
  );
}
