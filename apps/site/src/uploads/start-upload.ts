import { Upload } from 'tus-js-client';
import { tusTrouble } from './tus-trouble.ts';
import { type ClipFacts, clipIdOf, leftMs, type UploadState } from './upload-state.ts';

const chunkBytes = 8 * 2 ** 20;
const retryDelays = [0, 1000, 3000, 5000, 10_000, 20_000, 30_000];

type Job = { owner: string; file: File; facts: ClipFacts; tell: (state: UploadState) => void };

/** Starts or resumes the upload of a file and tells how it goes; answers the way to stop it. */
export const startUpload = ({ owner, file, facts, tell }: Job): (() => void) => {
  let stopped = false;
  let begun: { at: number; bytes: number } | null = null;
  const fileName = file.name;
  const clipId = () => clipIdOf(upload.url);
  const running = (sentBytes: number, totalBytes: number, left: number | null) =>
    tell({ kind: 'running', fileName, clipId: clipId(), sentBytes, totalBytes, leftMs: left });

  const upload: Upload = new Upload(file, {
    endpoint: '/uploads',
    chunkSize: chunkBytes,
    retryDelays,
    removeFingerprintOnSuccess: true,
    metadata: { filename: fileName, filetype: file.type, view: facts.view, swingLength: facts.swingLength },
    fingerprint: async () =>
      ['ballfirst', owner, fileName, file.size, file.lastModified, facts.view, facts.swingLength].join('|'),
    onUploadUrlAvailable: () => running(0, file.size, null),
    onProgress: (sent, total) => {
      begun ??= { at: performance.now(), bytes: sent };
      running(sent, total, leftMs(sent, begun.bytes, total, performance.now() - begun.at));
    },
    onSuccess: () => tell({ kind: 'done', fileName, clipId: clipId() ?? '' }),
    onError: (error) => {
      const { status, words } = tusTrouble(error);
      if (stopped) return;
      if (status === 0) {
        tell({
          kind: 'waiting',
          fileName,
          clipId: clipId(),
          sentBytes: begun?.bytes ?? 0,
          totalBytes: file.size,
          leftMs: null,
        });
        window.addEventListener('online', begin, { once: true });
      } else tell({ kind: 'stopped', fileName, clipId: clipId(), words, signedOut: status === 401 });
    },
  });

  const begin = () => {
    begun = null;
    upload
      .findPreviousUploads()
      .then(([previous]) => {
        if (stopped) return;
        if (previous !== undefined) upload.resumeFromPreviousUpload(previous);
        upload.start();
      })
      .catch(() => upload.start());
  };
  running(0, file.size, null);
  begin();
  return () => {
    stopped = true;
    window.removeEventListener('online', begin);
    upload.abort().catch(() => undefined);
  };
};
