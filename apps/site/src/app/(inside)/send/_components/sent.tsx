'use client';
import Link from 'next/link';
import { useEffect, useRef } from 'react';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { When } from '../../../../times/when.tsx';
import { filmWords } from '../../../../words/film.ts';
import { sendWords } from '../../../../words/send.ts';
import { ClipState } from './clip-state.tsx';
import { CorrectBlock } from './correct-block.tsx';
import { views } from './draft.ts';
import { MeansBlock } from './means-block.tsx';
import { SentGrip } from './sent-grip.tsx';
import { SentUpload } from './sent-upload.tsx';
import { isFilled, isOnItsWay, type Slots } from './slot.ts';
import type { GripSlot } from './use-grip-photo.ts';
import { usePutInPlace } from './use-put-in-place.ts';
import { type Submission, useSubmission } from './use-submission.ts';

type Props = {
  submissionId: string;
  first?: Submission;
  slots: Slots;
  /** The photo that may still be on its way from here, or is added now. */
  grip: GripSlot;
  onAnother?: () => void;
};

const correctable = new Set(['preparing', 'needs-clip', 'waiting', 'film-again']);
const toFilm = new Set(['needs-clip', 'film-again']);

/** After sending: the videos' way to the coach, another one in place of a refused one, and what can be put right. */
export function Sent({ submissionId, first, slots, grip, onAnother }: Props) {
  const all = views.map((view) => slots[view]);
  const onItsWay = all.some(isOnItsWay) || isOnItsWay(grip);
  const { submission, setSubmission, trouble, renew } = useSubmission(submissionId, first ?? null, onItsWay);
  const needsClip = submission !== null && toFilm.has(submission.status);
  const sending = usePutInPlace({ submission, needsClip, all, onPut: setSubmission });
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);

  const broken = submission?.clips.find((clip) => clip.refusal !== null) ?? submission?.clips[0];
  const target = slots[broken?.view ?? 'face-on'];
  const shown = all.filter((slot) => isFilled(slot) || (needsClip && slot === target));
  return (
    <main id="content" className="page">
      <h1 ref={heading} tabIndex={-1}>
        {needsClip ? sendWords.putRight : sendWords.sentTitle}
      </h1>
      {submission?.status === 'film-again' && <p className="notice look">{sendWords.filmAgain}</p>}
      {needsClip && (
        <p>
          <Link href="/filming">{filmWords.guide}</Link>
        </p>
      )}
      {submission?.status === 'withdrawn' && <p className="notice">{sendWords.sentWithdrawn}</p>}
      {shown.map((slot) => (
        <SentUpload key={slot.facts.view} slot={slot} asks={needsClip && slot === target} />
      ))}
      {submission?.status !== 'withdrawn' && submission?.status !== 'film-again' && (
        <div className="stack" aria-live="polite">
          {submission?.clips.map((clip) => (
            <div key={clip.id} className="stack tight">
              {submission.clips.length > 1 && <h2>{filmWords.side[clip.view]}</h2>}
              <ClipState clip={clip} />
            </div>
          ))}
        </div>
      )}
      {submission !== null && submission.status !== 'withdrawn' && (
        <SentGrip submissionId={submissionId} slot={grip} mayPut={correctable.has(submission.status)} />
      )}
      {submission !== null && correctable.has(submission.status) && !needsClip && (
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
      {submission !== null && correctable.has(submission.status) && (
        <CorrectBlock submission={submission} onSaved={setSubmission} onStale={renew} />
      )}
      {submission !== null && <MeansBlock studentId={submission.student.id} />}
    </main>
  );
}
