'use client';
import { useEffect, useRef } from 'react';
import type { ClipFacts } from '../../../../uploads/upload-state.ts';
import { useUpload } from '../../../../uploads/use-upload.ts';
import type { Draft, KeptClip, View } from './draft.ts';
import type { Slot } from './slot.ts';
import { useClipCheck } from './use-clip-check.ts';

/** The key under which the device keeps the video of a view. */
export const ownerOf = (owner: string, view: View): string =>
  view === 'face-on' ? owner : `${owner}.behind`;

type Given = {
  owner: string;
  view: View;
  draft: Draft | null;
  change: (next: (draft: Draft) => Draft) => void;
  swingLength: ClipFacts['swingLength'];
};

/**
 * One view's video in the form: looked at, uploaded, taken up again after a reload, and the draft kept in step with it.
 * The facts stay those its upload began with: a swing length said later travels with the form and begins no new upload.
 */
export const useClip = ({ owner, view, draft, change, swingLength }: Given): Slot => {
  const uploading = useUpload(ownerOf(owner, view));
  const { state, resume } = uploading;
  const resumed = useRef(false);
  const known = draft?.clips[view] ?? null;
  const facts = known?.facts ?? { view, swingLength };
  const put = (clip: KeptClip | null) => change((now) => ({ ...now, clips: { ...now.clips, [view]: clip } }));

  useEffect(() => {
    if (draft === null || resumed.current) return;
    resumed.current = true;
    const kept = draft.clips[view];
    if (kept !== null) void resume(kept, kept.facts);
  }, [draft, resume, view]);

  const { kind } = state;
  const fileName = state.kind === 'none' ? null : state.fileName;
  const clipId = state.kind === 'none' ? null : state.clipId;
  useEffect(() => {
    if (fileName === null || (kind !== 'done' && clipId === null)) return;
    const done = kind === 'done';
    change((now) => {
      const kept = now.clips[view];
      if (kept === null || (kept.fileName === fileName && kept.clipId === clipId && kept.done === done)) {
        return now;
      }
      return { ...now, clips: { ...now.clips, [view]: { ...kept, fileName, clipId, done } } };
    });
  }, [kind, fileName, clipId, change, view]);

  const { checked, check, anyway, forget } = useClipCheck((file) => {
    put({ fileName: file.name, clipId: null, done: false, facts });
    uploading.choose(file, facts);
  });
  const remove = () => {
    forget();
    uploading.forget();
    put(null);
  };
  return { facts, uploading, checked, check, anyway, remove };
};
