import { Upload } from 'tus-js-client';
import { firstChunkBytes, nextChunkBytes } from './chunk-size.ts';
import { tusTrouble } from './tus-trouble.ts';
import { clipIdOf, leftMs, type UploadFacts, type UploadState } from './upload-state.ts';

const retryDelays = [0, 1000, 3000, 5000, 10_000, 20_000, 30_000];
/** Without an answer the upload is tried again after so long, or as soon as the phone says it has signal. */
const againMs = 20_000;

type Job = { owner: string; file: File; facts: UploadFacts; tell: (state: UploadState) => void };

export type RunningUpload = {
  /** Stops here; it can be gone on with later. */
  stop(): void;
  /** Gives it up: the door forgets what has arrived and its place is free. */
  drop(): void;
};

/** Starts or resumes the upload of a file and tells how it goes. */
export const startUpload = ({ owner, file, facts, tell }: Job): RunningUpload => {
  let stopped = false;
  let done = false;
  let sentBytes = 0;
  let begun: { at: number; bytes: number } | null = null;
  let chunkBegan: number | null = null;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const fileName = file.name;
  const totalBytes = file.size;
  const clipId = () => clipIdOf(upload.url);
  const onItsWay = (kind: 'running' | 'waiting', left: number | null) =>
    tell({ kind, fileName, clipId: clipId(), sentBytes, totalBytes, leftMs: left });

  const upload: Upload = new Upload(file, {
    endpoint: '/uploads',
    chunkSize: firstChunkBytes,
    retryDelays,
    removeFingerprintOnSuccess: true,
    metadata: { filename: fileName, filetype: file.type, view: facts.view, swingLength: facts.swingLength },
    fingerprint: async () =>
      ['ballfirst', owner, fileName, file.size, file.lastModified, facts.view, facts.swingLength].join('|'),
    onUploadUrlAvailable: () => onItsWay('running', null),
    onBeforeRequest: (request) => {
      if (request.getMethod() === 'PATCH') chunkBegan = performance.now();
    },
    onProgress: (sent, total) => {
      sentBytes = sent;
      begun ??= { at: performance.now(), bytes: sent };
      onItsWay('running', leftMs(sent, begun.bytes, total, performance.now() - begun.at));
    },
    onChunkComplete: (bytes) => {
      // The client reads this option anew for each chunk.
      if (chunkBegan !== null)
        upload.options.chunkSize = nextChunkBytes(bytes, performance.now() - chunkBegan);
    },
    onSuccess: () => {
      done = true;
      tell({ kind: 'done', fileName, clipId: clipId() ?? '' });
    },
    onError: (error) => {
      const { status, words } = tusTrouble(error);
      if (stopped) return;
      if (status === 0) {
        onItsWay('waiting', null);
        window.addEventListener('online', begin, { once: true });
        waiting = setTimeout(begin, againMs);
      } else tell({ kind: 'stopped', fileName, clipId: clipId(), words, signedOut: status === 401 });
    },
  });

  const waitNoMore = () => {
    window.removeEventListener('online', begin);
    clearTimeout(waiting);
  };
  const begin = () => {
    waitNoMore();
    begun = null;
    upload.options.chunkSize = firstChunkBytes;
    upload
      .findPreviousUploads()
      .then(([previous]) => {
        if (stopped) return;
        if (previous !== undefined) upload.resumeFromPreviousUpload(previous);
        upload.start();
      })
      .catch(() => upload.start());
  };
  const end = (drop: boolean) => {
    stopped = true;
    waitNoMore();
    upload.abort(drop && !done).catch(() => undefined);
  };
  onItsWay('running', null);
  begin();
  return { stop: () => end(false), drop: () => end(true) };
};
