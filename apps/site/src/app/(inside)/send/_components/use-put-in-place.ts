'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import type { Slot } from './slot.ts';
import type { Submission } from './use-submission.ts';

type Given = {
  submission: Submission | null;
  needsClip: boolean;
  all: readonly Slot[];
  onPut: (submission: Submission) => void;
};

const clipIdIn = ({ uploading: { state } }: Slot): string | null =>
  state.kind === 'none' ? null : state.clipId;

/** Puts a newly chosen video in the place of one that could not be used, as soon as the door knows it. */
export const usePutInPlace = ({ submission, needsClip, all, onPut }: Given) => {
  const sending = useSending();
  const { run } = sending;
  const id = submission?.id ?? null;
  const known = submission?.clips.map((clip) => clip.id) ?? [];
  const clipId = all.map(clipIdIn).find((one) => one !== null && !known.includes(one)) ?? null;
  useEffect(() => {
    if (id === null || clipId === null || !needsClip) return;
    const put = () =>
      answerOf(api.POST('/api/submissions/{id}/clips', { params: { path: { id } }, body: { clipId } }));
    void run(put).then((done) => done !== null && onPut(done.answer));
  }, [id, clipId, needsClip, run, onPut]);
  return sending;
};
