'use client';
import { useRef, useState } from 'react';
import { replyWords } from '../words/reply.ts';
import styles from './swing-frame.module.css';

/** The whole swing on the student's own film; slow to begin with, because a swing is over in a second. */
export function SwingPlayer({ rendition, poster }: { rendition: string; poster: string }) {
  const video = useRef<HTMLVideoElement>(null);
  const [slow, setSlow] = useState(true);
  const pace = (element: HTMLVideoElement | null, isSlow: boolean) => {
    if (element !== null) element.playbackRate = isSlow ? 0.25 : 1;
  };
  return (
    <details className="no-print">
      <summary>{replyWords.play}</summary>
      <div className="stack tight">
        <video
          ref={video}
          src={rendition}
          poster={poster}
          controls
          muted
          loop
          playsInline
          preload="none"
          aria-label={replyWords.playLabel}
          className={styles.player}
          onLoadedMetadata={(event) => pace(event.currentTarget, slow)}
        />
        <label className="choice">
          <input
            type="checkbox"
            checked={slow}
            onChange={(event) => {
              setSlow(event.target.checked);
              pace(video.current, event.target.checked);
            }}
          />
          {replyWords.slow}
        </label>
      </div>
    </details>
  );
}
