'use client';
import { answerOf } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useEffect, useRef } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { When } from '../../../../times/when.tsx';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import type { ClipFacts } from '../../../../uploads/upload-state.ts';
import type { Uploading } from '../../../../uploads/use-upload.ts';
import { VideoInput } from '../../../../uploads/video-input.tsx';
import { sendWords } from '../../../../words/send.ts';
import { ClipState } from './clip-state.tsx';
import { type Submission, useSubmission } from './use-submission.ts';

type Props = {
  submissionId: string;
  first?: Submission;
  uploading: Uploading;
  facts: ClipFacts;
  onAnother?: () => void;
};

/** After sending: the video's way to the coach, and another one in place of a refused one. */
export function Sent({ submissionId, first, uploading, facts, onAnother }: Props) {
  const { state } = uploading;
  const onItsWay = state.kind === 'running' || state.kind === 'waiting';
  const { submission, setSubmission, trouble } = useSubmission(submissionId, first ?? null, onItsWay);
  const sending = useSending();
  const { run } = sending;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);

  const clipId = state.kind === 'none' ? null : state.clipId;
  const needsClip = submission?.status === 'needs-clip';
  const isNew = clipId !== null && submission?.clips.every((clip) => clip.id !== clipId) === true;
  useEffect(() => {
    if (!isNew || !needsClip) return;
    const put = () =>
      answerOf(
        api.POST('/api/submissions/{id}/clips', { params: { path: { id: submissionId } }, body: { clipId } }),
      );
    void run(put).then((done) => done !== null && setSubmission(done.answer));
  }, [isNew, needsClip, clipId, submissionId, run, setSubmission]);

  const again = () => state.kind !== 'none' && uploading.restart(state.fileName, facts);
  return (
    <main id="content" className="page">
      <h1 ref={heading} tabIndex={-1}>
        {needsClip ? sendWords.putRight : sendWords.sentTitle}
      </h1>
      {state.kind !== 'done' && <UploadLine state={state} onAgain={again} />}
      <div className="stack" aria-live="polite">
        {submission?.clips.map((clip) => (
          <ClipState key={clip.id} clip={clip} />
        ))}
      </div>
      {(needsClip || state.kind === 'asks-same') && (
        <VideoInput label={sendWords.chooseOther} onFile={(file) => uploading.choose(file, facts)} />
      )}
      {submission !== null && !needsClip && (
        <p>
          {sendWords.answerBy} <When at={submission.answerBy} />.
        </p>
      )}
      <TroubleNote trouble={sending.trouble ?? trouble} />
      <div className="row">
        <Link href="/home" className="button">
          {sendWords.toHome}
        </Link>
        {onAnother !== undefined && !onItsWay && !needsClip && (
          <button type="button" className="plain" onClick={onAnother}>
            {sendWords.again}
          </button>
        )}
      </div>
    </main>
  );
}
