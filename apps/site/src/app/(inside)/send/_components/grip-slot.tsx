'use client';
import { PhotoInput } from '../../../../uploads/photo-input.tsx';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import { gripWords } from '../../../../words/grip.ts';
import { photoFacts, type GripSlot as Slot } from './use-grip-photo.ts';

/** The optional photo of the hands: how to take it, how far it is, another one or none. */
export function GripSlot({ slot }: { slot: Slot }) {
  const { state, restart } = slot.uploading;
  const filled = state.kind !== 'none';
  return (
    <details open={filled}>
      <summary>{gripWords.add}</summary>
      <div className="stack">
        <p>{gripWords.how}</p>
        <UploadLine
          state={state}
          label={gripWords.upload}
          onAgain={() => filled && restart(state.fileName, photoFacts)}
        />
        <PhotoInput label={filled ? gripWords.another : gripWords.choose} onFile={slot.choose} />
        {filled && (
          <button type="button" className="plain" onClick={slot.remove}>
            {gripWords.remove}
          </button>
        )}
      </div>
    </details>
  );
}
