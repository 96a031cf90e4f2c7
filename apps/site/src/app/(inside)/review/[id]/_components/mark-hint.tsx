'use client';
import { hintWords } from '../../../../../words/hints.ts';
import type { AskingHere } from './use-asking.ts';

type Props = { asking: AskingHere; frame: number; canWork: boolean };

/** Where the last swing says that the mark lies: to be looked at, dragged or confirmed, never taken as it is. */
export function MarkHint({ asking, frame, canWork }: Props) {
  const { hint } = asking;
  if (hint === null || !canWork) return null;
  return (
    <p className="row small">
      {hint.frame === frame ? (
        <>
          {hintWords.here}
          <button type="button" className="small-button" aria-keyshortcuts="y" onClick={asking.confirmHint}>
            {hintWords.confirm}
          </button>
        </>
      ) : (
        <>
          {hintWords.elsewhere(hint.frame + 1)}
          <button type="button" className="small-button" aria-keyshortcuts="t" onClick={asking.goToHint}>
            {hintWords.go}
          </button>
        </>
      )}
    </p>
  );
}
