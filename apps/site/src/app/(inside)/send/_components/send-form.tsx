'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect, useRef } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { newKey } from '../../../../http/new-key.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import { useUpload } from '../../../../uploads/use-upload.ts';
import { sendWords } from '../../../../words/send.ts';
import { BallsStep } from './balls-step.tsx';
import { afterSending, bodyOf, type Draft } from './draft.ts';
import { FilmStep } from './film-step.tsx';
import { SayStep } from './say-step.tsx';
import { Sent } from './sent.tsx';
import { StepMoves } from './step-moves.tsx';
import { StepNames } from './step-names.tsx';
import { useDraft } from './use-draft.ts';

type Props = { studentId: string; hand: 'right' | 'left'; checkInId: string | null };

/** Sending a swing in three steps; the upload goes on under all of them. */
export function SendForm({ studentId, hand, checkInId }: Props) {
  const { draft, change, forget } = useDraft(studentId);
  const uploading = useUpload(studentId);
  const { state, resume } = uploading;
  const sending = useSending();
  const heading = useRef<HTMLHeadingElement>(null);
  const resumed = useRef(false);

  useEffect(() => {
    if (draft === null || resumed.current) return;
    resumed.current = true;
    if (draft.clip !== null) void resume(draft.clip, draft);
  }, [draft, resume]);

  const { kind } = state;
  const fileName = state.kind === 'none' ? null : state.fileName;
  const clipId = state.kind === 'none' ? null : state.clipId;
  useEffect(() => {
    if (fileName === null || (kind !== 'done' && clipId === null)) return;
    change((now) => ({ ...now, clip: { fileName, clipId, done: kind === 'done' } }));
  }, [kind, fileName, clipId, change]);

  if (draft === null) return <main id="content" className="page" aria-busy="true" />;
  const again = () => fileName !== null && uploading.restart(fileName, draft);

  if (draft.sentId !== null) {
    const another = () => {
      uploading.forget();
      forget();
    };
    return <Sent submissionId={draft.sentId} uploading={uploading} facts={draft} onAnother={another} />;
  }

  const goTo = (step: Draft['step']) => {
    change((now) => ({ ...now, step }));
    requestAnimationFrame(() => heading.current?.focus());
  };

  const send = async () => {
    if (clipId === null) return;
    const body = bodyOf(draft, [clipId], checkInId);
    const text = JSON.stringify(body);
    const once = draft.once?.body === text ? draft.once : { key: newKey(), body: text };
    change((now) => ({ ...now, once }));
    const header = { 'Idempotency-Key': once.key };
    const done = await sending.run(() =>
      answerOf(api.POST('/api/submissions', { params: { header }, body })),
    );
    if (done !== null) change((now) => afterSending(now, done.answer.id));
  };

  return (
    <main id="content" className="page">
      <div className="stack tight">
        <h1>{sendWords.title}</h1>
        <StepNames step={draft.step} onStep={goTo} />
      </div>
      <h2 ref={heading} tabIndex={-1}>
        {[sendWords.steps.film, sendWords.steps.balls, sendWords.steps.say][draft.step - 1]}
      </h2>
      {draft.step === 1 && <FilmStep draft={draft} change={change} uploading={uploading} hand={hand} />}
      {draft.step === 2 && <BallsStep draft={draft} change={change} />}
      {draft.step === 3 && <SayStep draft={draft} change={change} />}
      {draft.step !== 1 && <UploadLine state={state} onAgain={again} />}
      <TroubleNote trouble={sending.trouble} />
      <StepMoves draft={draft} hasClip={clipId !== null} busy={sending.busy} goTo={goTo} send={send} />
      <p className="hint">{sendWords.kept}</p>
    </main>
  );
}
