'use client';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { reviewWords } from '../../../../../words/review.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';

const words = { saved: reviewWords.saved, saving: reviewWords.saving, unsaved: reviewWords.unsaved } as const;

/** Whether the marks are stored, and what to do when they are not. */
export function SaveLine({ marking }: { marking: ClipMarking }) {
  return (
    <div className="stack tight">
      <p role="status" className="small soft">
        {words[marking.state]}
        {marking.merged && `. ${reviewWords.merged}`}
      </p>
      <TroubleNote trouble={marking.trouble} />
      {marking.trouble !== null && (
        <button type="button" className="small-button" onClick={marking.save}>
          {reviewWords.again}
        </button>
      )}
    </div>
  );
}
