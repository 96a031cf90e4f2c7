'use client';
import { usePathname } from 'next/navigation';
import { sendWords } from '../words/send.ts';
import { shellWords } from '../words/shell.ts';
import { bytesInWords, lengthInWords } from '../words/times.ts';
import type { UploadState } from './upload-state.ts';

type Props = { state: UploadState; onAgain: () => void; label?: string };

/** How far the video is: bytes and minutes, or what to do. */
export function UploadLine({ state, onAgain, label = sendWords.upload }: Props) {
  const path = usePathname();
  if (state.kind === 'none') return null;
  if (state.kind === 'done') {
    return (
      <p role="status">
        <strong>{state.fileName}</strong>. {sendWords.uploadDone}
      </p>
    );
  }
  if (state.kind === 'asks-same')
    return <p className="notice look">{sendWords.chooseSame(state.fileName)}</p>;
  if (state.kind === 'stopped') {
    return (
      <div className="notice look stack tight" role="alert">
        <p>
          {sendWords.uploadStopped} {state.words}
        </p>
        {state.signedOut ? (
          <a href={`/sign-in?next=${encodeURIComponent(path)}`}>{shellWords.signInAgain}</a>
        ) : (
          <button type="button" onClick={onAgain}>
            {sendWords.uploadAgain}
          </button>
        )}
      </div>
    );
  }
  const of = sendWords.uploadOf(bytesInWords(state.sentBytes), bytesInWords(state.totalBytes));
  return (
    <div className="stack tight">
      <p>
        <strong>{state.fileName}</strong>{' '}
        <span className="soft">
          {of}
          {state.leftMs !== null && `, ${sendWords.uploadLeft(lengthInWords(state.leftMs))}`}
        </span>
      </p>
      <progress aria-label={label} max={state.totalBytes} value={state.sentBytes} />
      <p className="hint">{state.kind === 'waiting' ? sendWords.uploadWaiting : sendWords.locked}</p>
    </div>
  );
}
