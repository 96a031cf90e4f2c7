'use client';
import { compareWords } from '../../../../../words/compare.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { lineNames, stageWords } from '../../../../../words/stage.ts';
import type { LineKind } from './overlay-lines.ts';
import styles from './stage.module.css';
import { lightSteps, type StageView } from './use-stage.ts';
import { zoomSteps } from './view-part.ts';

type Props = {
  stage: StageView;
  kinds: readonly LineKind[];
  hidden: ReadonlySet<LineKind>;
  onLine: (kind: LineKind) => void;
  onFullScreen: () => void;
  onKeys: () => void;
  compare: { readonly on: boolean; toggle: () => void };
};

/** How the picture is looked at: closer, brighter, with which lines, on the whole screen. */
export function StageOptions({ stage, kinds, hidden, onLine, onFullScreen, onKeys, compare }: Props) {
  const { zoom, light } = stage;
  const button = (name: string, on: boolean, act: () => void) => (
    <button type="button" className="small-button" disabled={!on} onClick={act}>
      {name}
    </button>
  );
  return (
    <>
      <div className={styles.moves}>
        <span>
          {button(reviewWords.wider, zoom.times > 1, () => stage.closer(-1))}
          {button(reviewWords.closer, zoom.times < (zoomSteps.at(-1) ?? 1), () => stage.closer(1))}
          <span className="small">{stageWords.times(zoom.times)}</span>
        </span>
        <span>
          <button type="button" className="small-button" aria-pressed={compare.on} onClick={compare.toggle}>
            {compareWords.open}
          </button>
          {button(stageWords.fullScreen, true, onFullScreen)}
          {button(stageWords.keysTitle, true, onKeys)}
        </span>
      </div>
      <details className={styles.look}>
        <summary>{stageWords.lightAndLines}</summary>
        <div className={styles.moves}>
          <span>
            {button(stageWords.darker, light > 0, () => stage.brighter(-1))}
            {button(stageWords.brighter, light < lightSteps - 1, () => stage.brighter(1))}
          </span>
          <fieldset className={styles.lineChoices}>
            <legend className="unseen">{stageWords.lines}</legend>
            {kinds.map((kind) => (
              <label key={kind}>
                <input type="checkbox" checked={!hidden.has(kind)} onChange={() => onLine(kind)} />
                {lineNames[kind]}
              </label>
            ))}
          </fieldset>
        </div>
      </details>
    </>
  );
}
