'use client';
import { replyWords } from '../words/reply.ts';
import { withinFrameS } from './draw-frame.ts';
import type { Frame } from './frame.ts';
import { MarkCrosses } from './mark-crosses.tsx';
import styles from './swing-frame.module.css';
import { useFrame } from './use-frame.ts';

/** One moment of a swing drawn here, with the coach's marks on it. The poster stands in until the very frame is drawn. */
export function DrawnFrame({ frame }: { frame: Frame }) {
  const { widthPx, heightPx, marks, caption } = frame;
  const { canvas, state, failed } = useFrame(frame.rendition, frame.timeS);
  const shown = state === 'drawn' || state === 'player';
  const names = shown ? marks.map(({ name }) => name) : [];
  return (
    <figure className="stack tight">
      <div
        role="img"
        aria-label={replyWords.pictureOf(caption, names)}
        aria-busy={state === 'drawing'}
        data-frame={state}
        className={styles.stage}
      >
        <canvas ref={canvas} width={widthPx} height={heightPx} className={styles.picture} />
        {!shown && (
          <svg aria-hidden="true" viewBox={`0 0 ${widthPx} ${heightPx}`} className={styles.layer}>
            <image href={frame.poster} width={widthPx} height={heightPx} />
          </svg>
        )}
        {state === 'player' && (
          <video
            src={`${frame.rendition}#t=${(frame.timeS + withinFrameS).toFixed(4)}`}
            poster={frame.poster}
            preload="auto"
            muted
            playsInline
            tabIndex={-1}
            aria-hidden="true"
            className={styles.layer}
            onError={failed}
          />
        )}
        {shown && <MarkCrosses marks={marks} widthPx={widthPx} heightPx={heightPx} />}
      </div>
      <figcaption>
        {caption}
        {state === 'drawing' && <span className="soft small"> {replyWords.pictureComes}</span>}
        {state === 'failed' && <span className="soft small"> {replyWords.pictureFailed}</span>}
      </figcaption>
    </figure>
  );
}
