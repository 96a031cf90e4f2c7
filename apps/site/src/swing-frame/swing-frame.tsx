'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { DrawnFrame } from './drawn-frame.tsx';
import styles from './swing-frame.module.css';

type ReplyFrame = Reply<'readReply'>['frames'][number];
/** A frame before it is sent has no picture yet. */
export type Frame = Omit<ReplyFrame, 'still' | 'described'> & Partial<ReplyFrame>;

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
