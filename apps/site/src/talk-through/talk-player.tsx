'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useMemo } from 'react';
import { FrameCanvas } from '../frames/frame-canvas.tsx';
import { useClip } from '../frames/use-clip.ts';
import { talkWords } from '../words/talk.ts';
import { captionAt, clockOf } from './captions-from.ts';
import { partOfStep } from './part-of-step.ts';
import { Pointing } from './pointing.tsx';
import { stepAt } from './record-track.ts';
import styles from './talk-player.module.css';
import { usePlayback } from './use-playback.ts';

export type Heard = NonNullable<Reply<'readReply'>['talkThrough']>;

/** A talk-through on its clip: the sound leads; the frame, the part of it and what is pointed at follow the track. */
export default function TalkPlayer({ talk }: { talk: Heard }) {
  const { durationMs, track, captions, picture, media } = talk;
  const opening = useClip(media.rendition);
  const playback = usePlayback(durationMs);
  const { atMs, playing } = playback;
  const step = stepAt(track, atMs);
  const part = useMemo(() => partOfStep(picture, step), [picture, step]);
  const pictures = opening.kind === 'open' ? opening.clip.pictures : null;
  const frame = step?.frame ?? 0;
  const said = captionAt(captions, atMs);
  const time = talkWords.time(clockOf(atMs), clockOf(durationMs));
  const point = step?.point ?? null;
  return (
    <div className="stack tight">
      <div className={styles.stage}>
        <FrameCanvas
          pictures={pictures}
          frame={frame}
          width={picture.widthPx}
          height={picture.heightPx}
          part={part}
          label={talkWords.picture(frame + 1)}
          className={styles.picture}
        />
        <svg
          aria-hidden="true"
          viewBox={`${part.x} ${part.y} ${part.width} ${part.height}`}
          className={styles.layer}
        >
          {point !== null && <Pointing x={point.x} y={point.y} size={part.height * 0.03} />}
        </svg>
        {said !== null && <p className={styles.said}>{said}</p>}
      </div>
      <audio ref={playback.audio} src={talk.sound} preload="auto" {...playback.events}>
        <track kind="captions" />
      </audio>
      <div className={styles.moves}>
        <button type="button" onClick={playback.toggle} disabled={pictures === null}>
          {playing ? talkWords.pause : talkWords.play}
        </button>
        <input
          type="range"
          aria-label={talkWords.position}
          aria-valuetext={time}
          min={0}
          max={durationMs}
          step={100}
          value={atMs}
          onChange={(event) => playback.seek(Number(event.target.value))}
        />
        <span className={styles.time}>{time}</span>
      </div>
      {opening.kind === 'opening' && <p role="status">{talkWords.opening}</p>}
      {(opening.kind === 'failed' || playback.failed) && <p role="alert">{talkWords.failed}</p>}
    </div>
  );
}
