'use client';
import { VideoInput } from '../../../../uploads/video-input.tsx';
import { filmWords } from '../../../../words/film.ts';
import { ClipProgress } from './clip-progress.tsx';
import type { Slot } from './slot.ts';

/** A video still on its way after the form was sent, or the place for another one. */
export function SentUpload({ slot, asks }: { slot: Slot; asks: boolean }) {
  const { state } = slot.uploading;
  const moves = slot.checked.kind === 'looking' || slot.checked.kind === 'asks';
  return (
    <div className="stack">
      {(state.kind !== 'done' || moves) && <ClipProgress slot={slot} />}
      {(asks || state.kind === 'asks-same') && (
        <VideoInput label={filmWords.chooseOther[slot.facts.view]} onFile={(file) => void slot.check(file)} />
      )}
    </div>
  );
}
