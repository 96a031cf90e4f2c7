'use client';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import { filmWords } from '../../../../words/film.ts';
import { DoubtsNote } from './doubts-note.tsx';
import type { Slot } from './slot.ts';

/** How far a video is: looked at, asked about, on its way, up. */
export function ClipProgress({ slot }: { slot: Slot }) {
  const { checked, anyway, uploading, facts } = slot;
  const { state, restart } = uploading;
  if (checked.kind === 'looking') return <p role="status">{filmWords.looking}</p>;
  if (checked.kind === 'asks') {
    return <DoubtsNote fileName={checked.file.name} doubts={checked.doubts} onAnyway={anyway} />;
  }
  return (
    <>
      <UploadLine state={state} onAgain={() => state.kind !== 'none' && restart(state.fileName, facts)} />
      {checked.kind === 'told' && (
        <DoubtsNote fileName={checked.fileName} doubts={checked.doubts} onAnyway={null} />
      )}
    </>
  );
}
