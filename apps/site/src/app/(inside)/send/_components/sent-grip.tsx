'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import { gripWords } from '../../../../words/grip.ts';
import { isOnItsWay } from './slot.ts';
import { type GripSlot, photoFacts } from './use-grip-photo.ts';

type Photo = Reply<'readGripPhotoOfSwing'>['photo'];
const everyMs = 2000;
const moving = new Set(['uploading', 'uploaded', 'preparing']);

/** The photo of the grip after sending: on its way, with the coach, or why it cannot be used. */
export function SentGrip({ submissionId, slot }: { submissionId: string; slot: GripSlot | null }) {
  const [photo, setPhoto] = useState<Photo>(null);
  const polls = slot !== null;
  const onItsWay = slot !== null && isOnItsWay(slot);
  const waits = photo === null || moving.has(photo.status);
  useEffect(() => {
    let wanted = true;
    const params = { path: { id: submissionId } };
    const ask = () =>
      answerOf(api.GET('/api/submissions/{id}/grip-photo', { params })).then(
        (found) => wanted && setPhoto(found.photo),
        () => undefined,
      );
    void ask();
    const timer = waits && polls ? setInterval(ask, everyMs) : undefined;
    return () => {
      wanted = false;
      clearInterval(timer);
    };
  }, [submissionId, waits, polls]);

  if (photo === null) return null;
  if (photo.status === 'ready') return <p role="status">{gripWords.sent}</p>;
  if (photo.refusal !== null)
    return (
      <div className="notice look stack tight" role="status">
        <h2>{gripWords.refused}</h2>
        <p>{photo.refusal.words}</p>
      </div>
    );
  if (slot === null || !onItsWay) {
    return <p role="status">{photo.status === 'uploading' ? gripWords.coming : gripWords.preparing}</p>;
  }
  const { state, restart } = slot.uploading;
  return (
    <UploadLine
      state={state}
      label={gripWords.upload}
      onAgain={() => state.kind !== 'none' && restart(state.fileName, photoFacts)}
    />
  );
}
