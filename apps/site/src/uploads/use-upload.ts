'use client';
import { useCallback, useEffect, useRef, useState } from 'react';
import { keptFile } from './kept-file.ts';
import { type RunningUpload, startUpload } from './start-upload.ts';
import type { UploadFacts, UploadState } from './upload-state.ts';

/** A file chosen again is another object; it is the same video when these agree. */
const sameFile = (one: File | null, other: File): boolean =>
  one?.name === other.name && one.size === other.size && one.lastModified === other.lastModified;

/** One video or photo on its way up, from whatever was kept of it. `owner` keeps those of two accounts apart. */
export const useUpload = (owner: string) => {
  const [state, setState] = useState<UploadState>({ kind: 'none' });
  const running = useRef<(RunningUpload & { facts: UploadFacts }) | null>(null);
  const file = useRef<File | null>(null);

  const begin = useCallback(
    (chosen: File, facts: UploadFacts) => {
      const same =
        sameFile(file.current, chosen) &&
        running.current?.facts.view === facts.view &&
        running.current.facts.swingLength === facts.swingLength;
      if (same) running.current?.stop();
      else running.current?.drop();
      file.current = chosen;
      const started = startUpload({
        owner,
        file: chosen,
        facts,
        tell: (next) => {
          setState(next);
          if (next.kind === 'done') void keptFile.forget(owner);
        },
      });
      running.current = { ...started, facts };
    },
    [owner],
  );

  const choose = useCallback(
    (chosen: File, facts: UploadFacts) => {
      void keptFile.keep(owner, chosen);
      begin(chosen, facts);
    },
    [begin, owner],
  );

  /** Goes on after a reload: with the kept file, or by asking for the same one. */
  const resume = useCallback(
    async (known: { fileName: string; clipId: string | null; done: boolean }, facts: UploadFacts) => {
      const { fileName, clipId } = known;
      if (known.done && clipId !== null) return setState({ kind: 'done', fileName, clipId });
      const kept = file.current ?? (await keptFile.find(owner));
      if (kept !== null && kept.name === fileName) return begin(kept, facts);
      setState({ kind: 'asks-same', fileName, clipId });
    },
    [begin, owner],
  );

  /** The same file again, also with other facts; a file that is no longer at hand is asked for. */
  const restart = useCallback(
    async (fileName: string, facts: UploadFacts) => {
      const kept = file.current ?? (await keptFile.find(owner));
      if (kept !== null && kept.name === fileName) begin(kept, facts);
      else setState({ kind: 'asks-same', fileName, clipId: null });
    },
    [begin, owner],
  );

  const forget = useCallback(() => {
    running.current?.drop();
    running.current = null;
    file.current = null;
    void keptFile.forget(owner);
    setState({ kind: 'none' });
  }, [owner]);

  useEffect(() => () => running.current?.stop(), []);
  return { state, choose, resume, restart, forget };
};

export type Uploading = ReturnType<typeof useUpload>;
