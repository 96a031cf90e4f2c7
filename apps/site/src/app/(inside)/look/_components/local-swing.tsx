'use client';
import { type ReactNode, useState } from 'react';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { lookWords } from '../../../../words/look.ts';
import { BallLine } from './ball-line.tsx';
import styles from './look.module.css';
import { type Speed, useLocalVideo } from './use-local-video.ts';

const speeds: readonly Speed[] = ['1', '0.5', '0.25', '0.125'];

type Props = { file: File; address: string /** The coach’s picture. */; beside: ReactNode };

/** The swing just filmed: slow, picture by picture, with one line to drag onto the ball. */
export function LocalSwing({ file, address, beside }: Props) {
  const { video, state, speed, setSpeed, toggle, step, seek, events } = useLocalVideo(file);
  const [line, setLine] = useState(0.5);
  if (state.failed) return <p className="notice look">{lookWords.cannot}</p>;
  const seconds = state.timeS.toFixed(2);
  return (
    <div className="stack tight">
      <div className={styles.pair}>
        <section className="stack tight" aria-labelledby="look-yours">
          <h2 id="look-yours">{lookWords.yours}</h2>
          <div className={styles.stage}>
            <video
              ref={video}
              src={address}
              muted
              playsInline
              loop
              preload="auto"
              aria-label={lookWords.yoursLabel}
              className={styles.video}
              {...events}
            />
            <BallLine at={line} onMove={setLine} />
          </div>
        </section>
        {beside}
      </div>
      <div className="row">
        <button type="button" onClick={() => step(-1)}>
          <span aria-hidden="true">−1</span>
          <span className="unseen">{lookWords.back}</span>
        </button>
        <button type="button" className="main" onClick={toggle}>
          {state.playing ? lookWords.pause : lookWords.play}
        </button>
        <button type="button" onClick={() => step(1)}>
          <span aria-hidden="true">+1</span>
          <span className="unseen">{lookWords.on}</span>
        </button>
        <span className="small" data-picture={state.frame}>
          {lookWords.picture(state.frame + 1, seconds)}
        </span>
      </div>
      <label className="field">
        <span>{lookWords.where}</span>
        <input
          type="range"
          min={0}
          max={state.durationS}
          step={0.01}
          value={state.timeS}
          className={styles.slider}
          aria-valuetext={`${seconds} s`}
          onChange={(event) => seek(Number(event.target.value))}
        />
      </label>
      <RadioRow
        legend={lookWords.speed}
        names={lookWords.speeds}
        order={speeds}
        value={speed}
        onChange={setSpeed}
      />
      <label className="field">
        <span>{lookWords.line}</span>
        <input
          type="range"
          min={0}
          max={1}
          step={0.005}
          value={line}
          className={styles.slider}
          aria-valuetext={lookWords.lineAt(Math.round(line * 100))}
          onChange={(event) => setLine(Number(event.target.value))}
        />
        <span className="hint">{lookWords.lineHint}</span>
      </label>
    </div>
  );
}
