'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useRef } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { newKey } from '../../../../http/new-key.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { useKeptDraft } from '../../../../kept/use-kept-draft.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { sendWords } from '../../../../words/send.ts';
import { BallsStep } from './balls-step.tsx';
import { behindHelps } from './behind-helps.ts';
import { BehindStep } from './behind-step.tsx';
import { ClipProgress } from './clip-progress.tsx';
import { afterSending, bodyOf, clipIdsOf, type Draft, emptyDraft } from './draft.ts';
import { FilmStep, type Length } from './film-step.tsx';
import { SayStep } from './say-step.tsx';
import { Sent } from './sent.tsx';
import { isFilled, isOnItsWay, type Slots } from './slot.ts';
import { StepMoves } from './step-moves.tsx';
import { StepNames } from './step-names.tsx';
import { useAwake } from './use-awake.ts';
import { useClip } from './use-clip.ts';
import { useGripPhoto } from './use-grip-photo.ts';

type Props = {
  studentId: string;
  hand: 'right' | 'left';
  junior: boolean;
  checkInId: string | null;
  rungLength: Length | null;
};

/** Sending a swing in three steps; the uploads go on under all of them. */
export function SendForm({ studentId, hand, junior, checkInId, rungLength }: Props) {
  const { draft, change, forget } = useKeptDraft(`ballfirst.send.${studentId}`, emptyDraft);
  const swingLength = draft?.swingLength ?? rungLength ?? 'full';
  const given = { owner: studentId, draft, change, swingLength };
  const faceOn = useClip({ ...given, view: 'face-on' });
  const behind = useClip({ ...given, view: 'down-the-line' });
  const grip = useGripPhoto({ owner: studentId, draft, change });
  const slots: Slots = { 'face-on': faceOn, 'down-the-line': behind };
  const sending = useSending();
  const heading = useRef<HTMLHeadingElement>(null);
  useAwake([faceOn, behind, grip].some(isOnItsWay));

  if (draft === null) return <main id="content" className="page" aria-busy="true" />;
  if (draft.sentId !== null) {
    const another = () => {
      faceOn.remove();
      behind.remove();
      grip.remove();
      forget();
    };
    return <Sent submissionId={draft.sentId} slots={slots} grip={grip} onAnother={another} />;
  }

  const goTo = (step: Draft['step']) => {
    change((now) => ({ ...now, step }));
    requestAnimationFrame(() => heading.current?.focus());
  };

  const send = async () => {
    const body = bodyOf(draft, swingLength, checkInId);
    const text = JSON.stringify(body);
    const once = draft.once?.body === text ? draft.once : { key: newKey(), body: text };
    change((now) => ({ ...now, once }));
    const header = { 'Idempotency-Key': once.key };
    const done = await sending.run(() =>
      answerOf(api.POST('/api/submissions', { params: { header }, body })),
    );
    if (done !== null) change((now) => afterSending(now, done.answer.id));
  };

  const { step } = draft;
  const showsBehind = step === 2 && (behindHelps(draft) || isFilled(behind));
  return (
    <main id="content" className="page">
      <div className="stack tight">
        <h1>{sendWords.title}</h1>
        <StepNames step={step} onStep={goTo} />
      </div>
      <h2 ref={heading} tabIndex={-1}>
        {[sendWords.steps.film, sendWords.steps.balls, sendWords.steps.say][step - 1]}
      </h2>
      {step === 1 && (
        <FilmStep
          {...{ slots, grip, hand, junior, swingLength, rungLength }}
          onLength={(length) => change((now) => ({ ...now, swingLength: length }))}
        />
      )}
      {step === 2 && <BallsStep draft={draft} change={change} />}
      {showsBehind && <BehindStep slot={behind} hand={hand} />}
      {step === 3 && <SayStep draft={draft} change={change} />}
      {step !== 1 && <ClipProgress slot={faceOn} />}
      {step === 3 && <ClipProgress slot={behind} />}
      <TroubleNote trouble={sending.trouble} />
      <StepMoves
        draft={draft}
        hasClip={clipIdsOf(draft).length > 0}
        busy={sending.busy}
        goTo={goTo}
        send={send}
      />
      <p className="hint">{sendWords.kept}</p>
    </main>
  );
}
