'use client';
import { PhonePlace } from '../../../../drawings/phone-place.tsx';
import { VideoInput } from '../../../../uploads/video-input.tsx';
import { filmWords } from '../../../../words/film.ts';
import { ClipProgress } from './clip-progress.tsx';
import { isFilled, type Slot } from './slot.ts';

/** One view: where the phone stands, and its video. */
export function ClipSlot({ slot, hand }: { slot: Slot; hand: 'right' | 'left' }) {
  const { view } = slot.facts;
  const filled = isFilled(slot);
  return (
    <div className="stack">
      <p>{filmWords.place[view]}</p>
      <PhonePlace view={view} hand={hand} />
      <ClipProgress slot={slot} />
      <VideoInput
        label={filled ? filmWords.chooseOther[view] : filmWords.choose[view]}
        onFile={(file) => void slot.check(file)}
      />
      {filled && view === 'down-the-line' && (
        <button type="button" className="plain" onClick={slot.remove}>
          {filmWords.remove}
        </button>
      )}
    </div>
  );
}
