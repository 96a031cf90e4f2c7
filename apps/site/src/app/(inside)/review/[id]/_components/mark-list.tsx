'use client';
import type { Place } from '@ballfirst/swing/place';
import { pointHints, pointNames, positionHints, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { keyOf, type Mark, markAt } from '../_marking/marking.ts';
import styles from './evidence.module.css';

type Props = {
  pass: readonly Place[];
  marks: readonly Mark[];
  target: number | null;
  canWork: boolean;
  onTarget: (index: number) => void;
  onRemove: (place: Place) => void;
};

/** The first pass, one click each: what comes next, what is placed, and the way back to any of them. */
export function MarkList({ pass, marks, target, canWork, onTarget, onRemove }: Props) {
  const placed = pass.filter((place) => markAt(marks, place) !== undefined).length;
  const asked = target === null ? undefined : pass[target];
  const positions = [...new Set(pass.map((place) => place.position))];
  return (
    <section className="stack tight" aria-labelledby="marks-title">
      <h2 id="marks-title">{reviewWords.marksTitle}</h2>
      {pass.length === 0 ? (
        <p>{reviewWords.noPass}</p>
      ) : (
        <p className="small" role="status">
          {reviewWords.marksLead(placed, pass.length)}
        </p>
      )}
      {asked !== undefined && (
        <div className={styles.asked}>
          <p>
            <strong>
              {reviewWords.placeNext}: {pointNames[asked.point]}, {positionNames[asked.position]}
            </strong>
          </p>
          <p className="small">
            {positionHints[asked.position]} {pointHints[asked.point] ?? ''}
          </p>
          {markAt(marks, asked) !== undefined && (
            <button
              type="button"
              className="plain small-button"
              disabled={!canWork}
              onClick={() => onRemove(asked)}
            >
              {reviewWords.removeMark}
            </button>
          )}
        </div>
      )}
      {pass.length > 0 && asked === undefined && <p className="small">{reviewWords.marksDone}</p>}
      <ol className={styles.pass}>
        {positions.map((position) => (
          <li key={position}>
            <span className={styles.position}>{positionNames[position]}</span>
            <ul className={styles.points}>
              {pass.map((place, index) => {
                if (place.position !== position) return null;
                const there = markAt(marks, place) !== undefined;
                return (
                  <li key={keyOf(place)}>
                    <button
                      type="button"
                      className={styles.point}
                      data-placed={there}
                      aria-label={`${pointNames[place.point]}, ${positionNames[position]}: ${there ? reviewWords.placed : reviewWords.notPlaced}`}
                      onClick={() => onTarget(index)}
                      {...(index === target && { 'aria-current': 'step' as const })}
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
    </section>
  );
}
