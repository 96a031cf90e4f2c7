'use client';
import { reviewWords } from '../../../../../words/review.ts';
import type { ReplyFrame } from './choose-frames.ts';
import styles from './reply-editor.module.css';

type Props = {
  frames: readonly ReplyFrame[];
  canWork: boolean;
  /** The frame on the stage, to be added. */
  stage: { clipId: string; frame: number } | null;
  onFrames: (frames: ReplyFrame[]) => void;
};
const most = 6;

/** The pictures of the reply: which frames, and a caption for each. */
export function ReplyFrames({ frames, canWork, stage, onFrames }: Props) {
  const add = () => stage !== null && onFrames([...frames, { ...stage, position: '', caption: '' }]);
  return (
    <fieldset className="stack tight" disabled={!canWork}>
      <legend>{reviewWords.frames}</legend>
      {frames.length === 0 && <p className="soft small">{reviewWords.noFrames}</p>}
      {frames.map((one, at) => (
        <div key={`${one.clipId} ${one.frame} ${one.position}`} className={styles.frame}>
          <span className="small">{reviewWords.momentFrame(one.frame + 1)}</span>
          <input
            aria-label={`${reviewWords.caption}: ${reviewWords.momentFrame(one.frame + 1)}`}
            maxLength={200}
            value={one.caption}
            onChange={(event) =>
              onFrames(
                frames.map((old, index) => (index === at ? { ...old, caption: event.target.value } : old)),
              )
            }
          />
          <button
            type="button"
            className="plain small-button"
            aria-label={`${reviewWords.dropFrame}: ${reviewWords.momentFrame(one.frame + 1)}`}
            onClick={() => onFrames(frames.filter((_, index) => index !== at))}
          >
            {reviewWords.dropFrame}
          </button>
        </div>
      ))}
      {stage !== null && frames.length < most && (
        <p>
          <button type="button" className="small-button" onClick={add}>
            {reviewWords.addFrame}
          </button>
        </p>
      )}
    </fieldset>
  );
}
