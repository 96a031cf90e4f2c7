'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { isOnItsWay } from './slot.ts';
import type { GripSlot } from './use-grip-photo.ts';

type Photo = Reply<'readGripPhotoOfSwing'>['photo'];
const everyMs = 2000;
const moving = new Set(['uploading', 'uploaded', 'preparing']);

/** The photo beside a sent swing, watched while it is on its way; one chosen here is put there as soon as the door knows it. */
export const useSentGrip = (submissionId: string, slot: GripSlot, mayPut: boolean) => {
  /** Undefined until it is known whether there is one. */
  const [photo, setPhoto] = useState<Photo>();
  const sending = useSending();
  const { run } = sending;
  const { state } = slot.uploading;
  const chosen = state.kind === 'none' ? null : state.clipId;
  const known = photo !== undefined;
  const waits = !known || (photo !== null && moving.has(photo.status)) || isOnItsWay(slot);
  useEffect(() => {
    if (!waits) return;
    let wanted = true;
    const params = { path: { id: submissionId } };
    const ask = () =>
      answerOf(api.GET('/api/submissions/{id}/grip-photo', { params })).then(
        (found) => wanted && setPhoto(found.photo),
        () => undefined,
      );
    void ask();
    const timer = setInterval(ask, everyMs);
    return () => {
      wanted = false;
      clearInterval(timer);
    };
  }, [submissionId, waits]);
  const isNew = known && mayPut && chosen !== null && chosen !== photo?.id;
  useEffect(() => {
    if (!isNew || chosen === null) return;
    const params = { path: { id: submissionId } };
    const put = () =>
      answerOf(api.PUT('/api/submissions/{id}/grip-photo', { params, body: { photoId: chosen } }));
    void run(put).then((done) => done !== null && setPhoto(done.answer.photo));
  }, [isNew, chosen, submissionId, run]);
  return { photo: photo ?? null, known, trouble: sending.trouble };
};
