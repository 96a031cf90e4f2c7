'use client';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { reviewWords } from '../../../../../words/review.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import { MarksConflict } from './marks-conflict.tsx';

const words = { saved: reviewWords.saved, saving: reviewWords.saving, unsaved: reviewWords.unsaved } as const;
const notes = { merged: reviewWords.merged, restored: reviewWords.restored } as const;

/** Whether the marks are stored, and what to do when they are not. */
export function SaveLine({ marking }: { marking: ClipMarking }) {
  return (
    <div className="stack tight">
      <p className="small soft">
        <span role="status">{words[marking.state]}</span>
        {marking.note !== null && <span>. {notes[marking.note]}</span>}
      </p>
      <MarksConflict marking={marking} />
      <TroubleNote trouble={marking.trouble} />
      {marking.trouble !== null && (
        <button type="button" className="small-button" onClick={marking.save}>
          {reviewWords.again}
        </button>
      )}
    </div>
  );
}
