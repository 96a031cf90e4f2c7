'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useCallback, useRef, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { viewNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { ReplyEditor } from '../_reply/reply-editor.tsx';
import { type Drill, fillFor } from '../_reply/reply-form.ts';
import { useReply } from '../_reply/use-reply.ts';
import { AboutSwing } from './about-swing.tsx';
import { CauseList } from './cause-list.tsx';
import { ClaimPanel } from './claim-panel.tsx';
import { Desk, type DeskView } from './desk.tsx';
import { FilmAgain } from './film-again.tsx';
import { PainPanel } from './pain-panel.tsx';
import { readyClips } from './ready-clips.ts';
import { useClaim } from './use-claim.ts';

type Props = { first: Reply<'openReview'>; drills: readonly Drill[]; membershipId: string };

export function Review({ first, drills, membershipId }: Props) {
  const held = useClaim(first.submission, membershipId);
  const { submission } = held;
  const replying = useReply(submission.id, first.reply);
  const choosing = useSending();
  const once = useOnceKey();
  const [chosen, setChosen] = useState(first.diagnosis?.chosenCause ?? first.reply?.cause ?? null);
  const [view, setView] = useState<DeskView | null>(null);
  const [at, setAt] = useState(0);
  const written = useRef('');
  const clips = readyClips(first);
  const canWork = held.mine && submission.status === 'waiting';
  const fault = first.evidence[0]?.fault ?? 'fat';
  const onView = useCallback((next: DeskView) => setView(next), []);

  const choose = async (cause: string) => {
    const ticks = replying.form.setUpTicks;
    const body = { fault, cause, setUpTicks: ticks };
    const params = { path: { id: submission.id }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await choosing.run(() =>
      answerOf(api.POST('/api/submissions/{id}/diagnosis', { params, body })),
    );
    if (done === null) return;
    once.answered();
    setChosen(cause);
    replying.change((form) => {
      const next = fillFor(form, cause, written.current, { submission, fault, drills, marking: view });
      written.current = next.words;
      return next;
    });
  };
  const { left } = replying;
  const { setSubmission } = held;
  const onLeft = useCallback(() => {
    left();
    setSubmission((now) => ({ ...now, status: 'answered', claim: null }));
  }, [left, setSubmission]);
  const programmeDrill = drills.find(({ id }) => id === first.openProgramme?.drillId)?.name ?? null;

  return (
    <>
      <div className="row apart">
        <div>
          <Link href="/inbox">{reviewWords.back}</Link>
          <h1>{reviewWords.title(submission.student.name)}</h1>
        </div>
        <ClaimPanel
          submission={submission}
          mine={held.mine}
          busy={held.busy}
          trouble={held.trouble}
          onClaim={held.claim}
          onRelease={held.release}
        />
      </div>
      <PainPanel submission={submission} busy={held.busy} onSeen={held.painSeen} />
      <AboutSwing review={{ ...first, submission }} drillName={programmeDrill} />
      {clips.length === 0 && <p className="notice">{reviewWords.noClip}</p>}
      {clips.length > 1 && (
        <div className="row">
          {clips.map(({ clip }, index) => (
            <button key={clip.id} type="button" aria-pressed={index === at} onClick={() => setAt(index)}>
              {reviewWords.clip(index + 1)}, {viewNames[clip.view].toLowerCase()}
            </button>
          ))}
        </div>
      )}
      {clips.map(({ clip, marking, evidence }, index) => (
        <Desk
          key={clip.id}
          submissionId={submission.id}
          clip={clip}
          first={{ marking, evidence }}
          fault={fault}
          canWork={canWork}
          active={index === at}
          onView={onView}
          causes={(now) => (
            <>
              <CauseList
                evidence={now.evidence}
                chosen={chosen}
                canWork={canWork}
                busy={choosing.busy}
                onChoose={choose}
              />
              <TroubleNote trouble={choosing.trouble} />
            </>
          )}
        />
      ))}
      <ReplyEditor
        replying={replying}
        drills={drills}
        hand={submission.student.hand}
        canWork={canWork}
        stage={view === null ? null : { clipId: view.clipId, frame: view.frame }}
        onSend={replying.send}
        onLeft={onLeft}
        submissionId={submission.id}
      />
      <FilmAgain canWork={canWork} busy={held.busy} onAsk={held.filmAgain} />
    </>
  );
}
