'use client';
import { inboxWords } from '../../../../words/inbox.ts';
import type { Undo } from './use-inbox.ts';

/** What was just done, and the way back. */
export function UndoLine({ undo }: { undo: Undo | null }) {
  return (
    <div role="status">
      {undo !== null && (
        <p className="row small">
          {undo.done === 'claimed' ? inboxWords.claimed(undo.name) : inboxWords.released(undo.name)}
          <button type="button" className="plain small-button" onClick={undo.back}>
            {inboxWords.undo}
          </button>
        </p>
      )}
    </div>
  );
}
