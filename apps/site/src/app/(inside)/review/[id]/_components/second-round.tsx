'use client';
import { hintWords } from '../../../../../words/hints.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';
import type { SecondRound } from './use-second-round.ts';

type Props = { round: SecondRound; placed: number; canWork: boolean };

/** The way to one's own doubt: the same marks twice, and what came of it. */
export function SecondRoundPanel({ round, placed, canWork }: Props) {
  const { on, doubt, count } = round;
  if (!on)
    return placed < 3 || !canWork ? null : (
      <p>
        <button type="button" className="small-button" onClick={round.begin}>
          {hintWords.twice}
        </button>
      </p>
    );
  return (
    <div className="notice stack tight">
      <p className="small">{hintWords.twiceLead(count, placed)}</p>
      {doubt !== null && (
        <p role="status">
          {hintWords.doubt(doubt.marks, doubt.px.toFixed(1), doubt.assumedPx.toFixed(1))}{' '}
          {hintWords.widest(
            `${pointNames[doubt.widest.point]}, ${positionNames[doubt.widest.position]}`,
            doubt.widestPx.toFixed(0),
          )}
        </p>
      )}
      <p className="row">
        <button type="button" className="small-button" disabled={count === 0} onClick={round.takeHalfWay}>
          {hintWords.takeHalfWay}
        </button>
        <button type="button" className="small-button" onClick={round.end}>
          {hintWords.keepFirst}
        </button>
      </p>
    </div>
  );
}
