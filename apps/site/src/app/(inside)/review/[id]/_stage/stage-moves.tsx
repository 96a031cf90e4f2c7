'use client';
import { reviewWords } from '../../../../../words/review.ts';
import { stageWords } from '../../../../../words/stage.ts';
import styles from './stage.module.css';
import type { Play } from './use-play.ts';
import type { StageView } from './use-stage.ts';

type Props = { stage: StageView; timesS: readonly number[]; play: Play; impactKnown: boolean };

/** Stepping by hand: one frame, ten frames, anywhere; slowly while a button is held; round and round impact. */
export function StageMoves({ stage, timesS, play, impactKnown }: Props) {
  const { frame, last } = stage;
  const where = reviewWords.frameOf(frame + 1, timesS.length, (timesS[frame] ?? 0).toFixed(3));
  const step = (by: number, name: string, sign: string) => (
    <button
      type="button"
      className="small-button"
      disabled={by < 0 ? frame === 0 : frame >= last}
      onClick={() => stage.step(by)}
    >
      {sign}
      <span className="unseen">{name}</span>
    </button>
  );
  return (
    <>
      <input
        type="range"
        aria-label={reviewWords.slider}
        aria-valuetext={where}
        min={0}
        max={Math.max(0, last)}
        value={frame}
        onChange={(event) => stage.goTo(Number(event.target.value))}
      />
      <div className={styles.moves}>
        <span>
          {step(-10, reviewWords.back10, '−10')}
          {step(-1, reviewWords.back1, '−1')}
          {step(1, reviewWords.on1, '+1')}
          {step(10, reviewWords.on10, '+10')}
        </span>
        <output className={styles.where}>{where}</output>
        <span>
          <button
            type="button"
            className="small-button"
            aria-pressed={play.playing === 'held'}
            onPointerDown={() => play.hold(true)}
            onPointerUp={() => play.hold(false)}
            onPointerLeave={() => play.hold(false)}
            onPointerCancel={() => play.hold(false)}
            onKeyDown={(event) => event.key === ' ' && !event.repeat && play.hold(true)}
            onKeyUp={(event) => event.key === ' ' && play.hold(false)}
            onBlur={() => play.hold(false)}
          >
            {stageWords.hold}
          </button>
          <button
            type="button"
            className="small-button"
            aria-pressed={play.playing === 'loop'}
            onClick={play.loop}
          >
            {impactKnown ? stageWords.loopImpact : stageWords.loopHere}
          </button>
        </span>
      </div>
    </>
  );
}
