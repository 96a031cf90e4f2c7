'use client';
import { lazy, Suspense, useState } from 'react';
import { talkWords } from '../words/talk.ts';
import { clockOf } from './captions-from.ts';
import type { Heard } from './talk-player.tsx';

/** Only who listens pays for the reader of videos. */
const TalkPlayer = lazy(() => import('./talk-player.tsx'));

/** The coach's voice on the student's own clip: a button until it is wanted. */
export function HeardTalk({ talk }: { talk: Heard }) {
  const [open, setOpen] = useState(false);
  return (
    <section className="stack tight no-print" aria-labelledby="heard-talk">
      <h2 id="heard-talk">{talkWords.heardTitle}</h2>
      {open ? (
        <Suspense fallback={<p role="status">{talkWords.opening}</p>}>
          <TalkPlayer talk={talk} />
        </Suspense>
      ) : (
        <p>
          <button type="button" onClick={() => setOpen(true)}>
            {talkWords.hear(clockOf(talk.durationMs))}
          </button>
        </p>
      )}
    </section>
  );
}
