'use client';
import type { Place } from '@ballfirst/swing/marks/place';
import { pointHints, pointNames, positionHints, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { stageWords } from '../../../../../words/stage.ts';
import { keyOf, markAt, samePlace } from '../_marking/marking.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import type { Asking } from '../_stage/use-pass.ts';
import type { Size } from '../_stage/view-part.ts';
import styles from './evidence.module.css';
import { MarkNumbers } from './mark-numbers.tsx';

type Props = {
  pass: readonly Place[];
  marking: ClipMarking;
  asking: Asking;
  size: Size;
  frames: number;
  canWork: boolean;
};

/** The first pass, one click each: what comes next, what is placed, and the way back to any of them. */
export function MarkList({ pass, marking, asking, size, frames, canWork }: Props) {
  const { marks } = marking.content;
  const { target, selected } = asking;
  const placed = pass.filter((place) => markAt(marks, place) !== undefined).length;
  const positions = [...new Set(pass.map((place) => place.position))];
  const chosen = selected === null ? undefined : markAt(marks, selected);
  return (
    <section className="stack tight" aria-labelledby="marks-title">
      <div className="row apart">
        <h2 id="marks-title">{reviewWords.marksTitle}</h2>
        <span className="row">
          <button
            type="button"
            className="plain small-button"
            disabled={!canWork || !marking.canUndo}
            onClick={marking.undo}
          >
            {reviewWords.undoMark}
          </button>
          <button
            type="button"
            className="plain small-button"
            disabled={!canWork || !marking.canRedo}
            onClick={marking.redo}
          >
            {reviewWords.redoMark}
          </button>
        </span>
      </div>
      {pass.length === 0 ? (
        <p>{reviewWords.noPass}</p>
      ) : (
        <p className="small" role="status">
          {reviewWords.marksLead(placed, pass.length)}
        </p>
      )}
      {target !== null && (
        <div className={styles.asked}>
          <p>
            <strong>
              {markAt(marks, target) === undefined ? reviewWords.placeNext : reviewWords.placeAgain}:{' '}
              {pointNames[target.point]}, {positionNames[target.position]}
            </strong>
          </p>
          <p className="small">
            {positionHints[target.position]} {pointHints[target.point] ?? ''}
          </p>
          {asking.aiming && (
            <p className="small" role="status">
              {asking.held === null ? stageWords.aimHelp : stageWords.heldHelp}
            </p>
          )}
        </div>
      )}
      {pass.length > 0 && target === null && <p className="small">{reviewWords.marksDone}</p>}
      <ol className={styles.pass}>
        {positions.map((position) => (
          <li key={position}>
            <span className={styles.position}>{positionNames[position]}</span>
            <ul className={styles.points}>
              {pass.map((place) => {
                if (place.position !== position) return null;
                const there = markAt(marks, place) !== undefined;
                return (
                  <li key={keyOf(place)}>
                    <button
                      type="button"
                      className={styles.point}
                      data-placed={there}
                      aria-label={`${pointNames[place.point]}, ${positionNames[position]}: ${there ? reviewWords.placed : reviewWords.notPlaced}`}
                      onClick={() => asking.choose(place)}
                      {...(samePlace(place, target) && { 'aria-current': 'step' as const })}
                    >
                      <span aria-hidden="true">{there ? '+' : '·'}</span> {pointNames[place.point]}
                    </button>
                  </li>
                );
              })}
            </ul>
          </li>
        ))}
      </ol>
      {chosen !== undefined && (
        <details>
          <summary className="small">
            {reviewWords.asNumbers}: {pointNames[chosen.point]}, {positionNames[chosen.position]}
          </summary>
          <div className="stack tight">
            <MarkNumbers mark={chosen} size={size} frames={frames} canWork={canWork} onPut={asking.put} />
            <button
              type="button"
              className="small-button"
              disabled={!canWork}
              onClick={() => asking.remove(chosen)}
            >
              {reviewWords.removeMark}
            </button>
          </div>
        </details>
      )}
    </section>
  );
}
