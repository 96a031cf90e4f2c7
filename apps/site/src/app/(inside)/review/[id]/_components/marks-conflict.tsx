'use client';
import { observationByKey } from '@ballfirst/library/observations';
import { hintWords } from '../../../../../words/hints.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { type Conflict, isMark, isObservation } from '../_marking/merge-three.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';

const whatOf = ({ mine, theirs, key }: Conflict): string => {
  const item = mine ?? theirs;
  if (item === null) return key;
  if (isMark(item)) return `${pointNames[item.point]}, ${positionNames[item.position]}`;
  return isObservation(item)
    ? (observationByKey(item.key)?.question ?? item.key)
    : hintWords.trailPoint(item.frame + 1);
};
const saidBy = (item: Conflict['mine']): string => {
  if (item === null) return reviewWords.takenAway;
  return isObservation(item)
    ? reviewWords.answers[item.answer]
    : reviewWords.markIs(item.frame + 1, Math.round(item.x), Math.round(item.y));
};

/** What two coaches changed differently: both versions side by side, and nothing stored until one is chosen. */
export function MarksConflict({ marking }: { marking: ClipMarking }) {
  const { conflicts, choose } = marking;
  if (conflicts.length === 0) return null;
  return (
    <section className="notice look stack tight" role="alert" aria-labelledby="conflict-title">
      <h3 id="conflict-title">{reviewWords.conflictTitle}</h3>
      <ul className="stack tight">
        {conflicts.map((conflict) => (
          <li key={conflict.key}>
            <strong>{whatOf(conflict)}</strong>
            <div className="row">
              <button type="button" className="small-button" onClick={() => choose(conflict, 'mine')}>
                {reviewWords.keepMine}: {saidBy(conflict.mine)}
              </button>
              <button type="button" className="small-button" onClick={() => choose(conflict, 'theirs')}>
                {reviewWords.takeTheirs}: {saidBy(conflict.theirs)}
              </button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
