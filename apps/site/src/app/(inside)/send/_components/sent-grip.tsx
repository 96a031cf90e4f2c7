'use client';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { PhotoInput } from '../../../../uploads/photo-input.tsx';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import { gripWords } from '../../../../words/grip.ts';
import { type GripSlot, photoFacts } from './use-grip-photo.ts';
import { useSentGrip } from './use-sent-grip.ts';

type Props = { submissionId: string; slot: GripSlot; mayPut: boolean };

/** The photo of the grip after sending: on its way, with the coach, or why it cannot be used; until the answer, another one. */
export function SentGrip({ submissionId, slot, mayPut }: Props) {
  const { photo, known, trouble } = useSentGrip(submissionId, slot, mayPut);
  const { state, restart } = slot.uploading;
  const uploads = state.kind !== 'none' && state.kind !== 'done';
  if (!known || (photo === null && !mayPut && !uploads)) return null;
  return (
    <div className="stack tight">
      {uploads ? (
        <UploadLine
          state={state}
          label={gripWords.upload}
          onAgain={() => restart(state.fileName, photoFacts)}
        />
      ) : (
        photo !== null && <PhotoState photo={photo} />
      )}
      <TroubleNote trouble={trouble} />
      {mayPut && (
        <details>
          <summary>{photo === null && !uploads ? gripWords.addSent : gripWords.another}</summary>
          <div className="stack">
            <p>{gripWords.how}</p>
            {photo !== null && <p className="hint">{gripWords.anotherHint}</p>}
            <PhotoInput label={gripWords.choose} onFile={slot.choose} />
          </div>
        </details>
      )}
    </div>
  );
}

function PhotoState({ photo }: { photo: NonNullable<ReturnType<typeof useSentGrip>['photo']> }) {
  if (photo.refusal !== null)
    return (
      <div className="notice look stack tight" role="status">
        <h2>{gripWords.refused}</h2>
        <p>{photo.refusal.words}</p>
      </div>
    );
  if (photo.photo !== null && photo.picture !== null)
    return (
      <div className="row" role="status">
        <picture>
          <img
            src={photo.photo}
            alt={gripWords.own}
            width={Math.round((96 * photo.picture.widthPx) / photo.picture.heightPx)}
            height={96}
          />
        </picture>
        <p>{gripWords.sent}</p>
      </div>
    );
  return <p role="status">{photo.status === 'uploading' ? gripWords.coming : gripWords.preparing}</p>;
}
