'use client';
import { useState } from 'react';
import { DrawnFrame } from './drawn-frame.tsx';
import type { Frame } from './frame.ts';
import styles from './swing-frame.module.css';

export type { Frame } from './frame.ts';

/** One moment of a swing: the picture that was made with the marks in it, else drawn here from the video. */
export function SwingFrame({ frame }: { frame: Frame }) {
  const [failed, setFailed] = useState(false);
  const { still, described, caption, widthPx, heightPx } = frame;
  if (!still || failed) return <DrawnFrame frame={frame} />;
  return (
    <figure className="stack tight">
      <div className={styles.stage}>
        <img
          src={still}
          alt={described ?? caption}
          width={widthPx}
          height={heightPx}
          className={styles.picture}
          onError={() => setFailed(true)}
        />
      </div>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}
