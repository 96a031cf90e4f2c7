'use client';
import { useEffect, useRef } from 'react';
import type { PhotoFacts } from '../../../../uploads/upload-state.ts';
import { type Uploading, useUpload } from '../../../../uploads/use-upload.ts';
import type { Draft, KeptPhoto } from './draft.ts';

export const photoFacts: PhotoFacts = { view: 'grip-photo', swingLength: 'none' };

export type GripSlot = {
  readonly uploading: Uploading;
  readonly choose: (file: File) => void;
  readonly remove: () => void;
};

type Given = { owner: string; draft: Draft | null; change: (next: (draft: Draft) => Draft) => void };

/** The photo of the grip in the form: uploaded, taken up again after a reload, and the draft kept in step with it. */
export const useGripPhoto = ({ owner, draft, change }: Given): GripSlot => {
  const uploading = useUpload(`${owner}.grip`);
  const { state, resume } = uploading;
  const resumed = useRef(false);
  const put = (photo: KeptPhoto | null) => change((now) => ({ ...now, photo }));

  useEffect(() => {
    if (draft === null || resumed.current) return;
    resumed.current = true;
    if (draft.photo !== null) void resume(draft.photo, photoFacts);
  }, [draft, resume]);

  const done = state.kind === 'done';
  const fileName = state.kind === 'none' ? null : state.fileName;
  const clipId = state.kind === 'none' ? null : state.clipId;
  useEffect(() => {
    if (fileName === null || (!done && clipId === null)) return;
    change((now) => {
      const kept = now.photo;
      if (kept === null || (kept.fileName === fileName && kept.clipId === clipId && kept.done === done)) {
        return now;
      }
      return { ...now, photo: { fileName, clipId, done } };
    });
  }, [done, fileName, clipId, change]);

  return {
    uploading,
    choose: (file) => {
      put({ fileName: file.name, clipId: null, done: false });
      uploading.choose(file, photoFacts);
    },
    remove: () => {
      uploading.forget();
      put(null);
    },
  };
};
