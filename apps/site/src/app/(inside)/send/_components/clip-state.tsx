'use client';
import { sendWords } from '../../../../words/send.ts';
import type { Submission } from './use-submission.ts';

/** One clip of a sent swing: on its way, being prepared, ready, or refused with a reason. */
export function ClipState({ clip }: { clip: Submission['clips'][number] }) {
  if (clip.status === 'ready') return <p>{sendWords.ready}</p>;
  if (clip.refusal !== null) {
    return (
      <div className="notice look stack tight" role="alert">
        <h2>{sendWords.refused}</h2>
        <p>{clip.refusal.words}</p>
      </div>
    );
  }
  if (clip.status === 'uploading') return <p>{sendWords.sentUploading}</p>;
  return (
    <div className="stack tight">
      <p>{sendWords.preparing}</p>
      <progress aria-label={sendWords.preparingProgress} max={100} value={clip.percent} />
    </div>
  );
}
