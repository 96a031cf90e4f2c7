'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import type { FaultId } from '@ballfirst/library/types';
import type { View } from '@ballfirst/swing/marks/marks';
import Link from 'next/link';
import { useCallback, useMemo, useRef, useState } from 'react';
import { AboutStudent } from '../../../../../about-student/about-student.tsx';
import { api } from '../../../../../http/browser-api.ts';
import type { Role } from '../../../../../http/read-me.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { reviewWords } from '../../../../../words/review.ts';
import { KeepModel } from '../_compare/keep-model.tsx';
import { useComparable } from '../_compare/use-comparable.ts';
import { ReplyEditor } from '../_reply/reply-editor.tsx';
import { type Drill, fillFor } from '../_reply/reply-form.ts';
import { useHelps } from '../_reply/use-helps.ts';
import { useReply } from '../_reply/use-reply.ts';
import { AboutSwing } from './about-swing.tsx';
import { BlindTurn } from './blind-turn.tsx';
import { CauseList } from './cause-list.tsx';
import { ClaimPanel } from './claim-panel.tsx';
import { Desk } from './desk.tsx';
import { DeskBar } from './desk-bar.tsx';
import type { DeskView } from './desk-view.ts';
import { FilmAgain, type Offered } from './film-again.tsx';
import { GripPhoto } from './grip-photo.tsx';
import { PainPanel } from './pain-panel.tsx';
import { PutRight } from './put-right.tsx';
import { readyClips } from './ready-clips.ts';
import styles from './review.module.css';
import { UnreadyClips } from './unready-clips.tsx';
import { type FilmAgainReason, useClaim } from './use-claim.ts';
import { useOrder } from './use-order.ts';
import { useStudentSet } from './use-student-set.ts';

type Props = { first: Reply<'openReview'>; drills: readonly Drill[]; membershipId: string; role: Role };

/** Before the desk is there, nothing is seen. */
const notYet = { camera: null, observations: [], evidence: { readings: [], fatRisk: null } } as const;

export function Review({ first, drills, membershipId, role }: Props) {
  const held = useClaim(first.submission, membershipId);
  const { submission, setSubmission } = held;
  const canWork = held.mine && submission.status === 'waiting';
  const replying = useReply({ id: submission.id, membershipId, first: first.reply, canWork });
  const helps = useHelps(submission.id, replying.form.cause, canWork, first.reply?.teachingClip ?? null);
  const [talkMs, setTalkMs] = useState<number | null>(null);
  const comparable = useComparable(submission.id);
  const studentSet = useStudentSet(submission.id, first.set);
  const choosing = useSending();
  const order = useOrder(submission.id, first);
  const once = useOnceKey();
  const [fault, setFault] = useState<FaultId>(first.evidence[0]?.fault ?? 'fat');
  const [chosen, setChosen] = useState(first.diagnosis?.chosenCause ?? first.reply?.cause ?? null);
  const [filling, setFilling] = useState(false);
  const [view, setView] = useState<DeskView | null>(null);
  const [at, setAt] = useState(0);
  const [putRight, setPutRight] = useState(false);
  const [offered, setOffered] = useState<Offered | null>(null);
  const written = useRef('');
  const { phrases } = helps;
  const { units } = first.about;
  const { camera, observations } = view ?? notYet;
  const { readings, fatRisk } = (view ?? notYet).evidence;
  const facts = useMemo(
    () => ({ submission, units, fault, phrases, view: camera, readings, fatRisk, observations }),
    [submission, units, fault, phrases, camera, readings, fatRisk, observations],
  );
  const clips = readyClips(submission.clips, first.marking);
  const kept = clips[at]?.clip.id;
  const onView = useCallback((next: DeskView) => setView(next), []);
  const offer = (reason: FilmAgainReason) => setOffered((now) => ({ reason, at: (now?.at ?? 0) + 1 }));
  const otherThan = (own: string) => {
    const others = clips.flatMap(({ clip }, index) => (clip.id === own ? [] : [{ view: clip.view, index }]));
    if (others.length === 0) return null;
    return (wanted: View) => {
      const found = others.find((one) => one.view === wanted);
      if (found !== undefined) setAt(found.index);
    };
  };

  const choose = async (cause: string) => {
    const body = { fault, cause, setUpTicks: replying.form.setUpTicks };
    const params = { path: { id: submission.id }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await choosing.run(() =>
      answerOf(api.POST('/api/submissions/{id}/diagnosis', { params, body })),
    );
    if (done === null) return;
    once.answered();
    order.chosen(done.answer);
    // It is called chosen when the reply holds it too: words, pictures, drill.
    setFilling(true);
    const found = await helps.offerFor(cause);
    setFilling(false);
    setChosen(cause);
    replying.change((form) => {
      const next = fillFor(form, cause, written.current, {
        ...{ submission, fault, drills, marking: view, offer: found },
        phrases: facts,
      });
      written.current = next.words;
      return next;
    });
  };
  const { left, change } = replying;
  const { films } = helps;
  const onFilm = useCallback(
    () =>
      change((form) => {
        const film = form.teachingClip === null && films.some((one) => one.cause === form.cause);
        return { ...form, teachingClip: film ? form.cause : null };
      }),
    [change, films],
  );
  const withReply = { talkGoes: replying.form.withTalk, onTalk: setTalkMs, onFilm };
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
      <UnreadyClips clips={submission.clips} />
      {clips.length > 0 && (
        <DeskBar
          clips={clips.map(({ clip }) => clip)}
          at={at}
          onClip={setAt}
          fault={fault}
          onFault={setFault}
          swing={{ hand: submission.student.hand, club: submission.club }}
          onPutRight={() => setPutRight(true)}
        />
      )}
      <div className={styles.bench}>
        <div className={styles.work}>
          {clips.map(({ clip, stored }, index) => (
            <Desk
              key={clip.id}
              submissionId={submission.id}
              membershipId={membershipId}
              clip={clip}
              swing={{ hand: submission.student.hand, club: submission.club }}
              stored={stored}
              fault={fault}
              canWork={canWork}
              active={index === at}
              onOther={clips.some((one) => one.clip.view !== clip.view) ? otherThan(clip.id) : null}
              order={order}
              onView={onView}
              onFilmAgain={offer}
              onPutRight={() => setPutRight(true)}
              comparable={comparable}
              studentSet={studentSet}
              units={units}
              withReply={withReply}
              causes={(now, onPlace) => (
                <>
                  {order.heldBack ? (
                    <BlindTurn
                      fault={fault}
                      canWork={canWork}
                      busy={choosing.busy || order.busy}
                      onName={choose}
                      onCannotTell={order.cannotTell}
                    />
                  ) : (
                    <CauseList
                      evidence={now.evidence}
                      begun={now.begun}
                      chosen={chosen}
                      named={order.named}
                      arrived={order.arrived}
                      canWork={canWork}
                      busy={choosing.busy || filling}
                      onChoose={choose}
                      onPlace={onPlace}
                    />
                  )}
                  <TroubleNote trouble={choosing.trouble ?? order.trouble} />
                </>
              )}
            />
          ))}
        </div>
        <aside className={styles.beside}>
          <GripPhoto submissionId={submission.id} name={submission.student.name} />
          <AboutStudent
            studentId={submission.student.id}
            first={null}
            beside={{ practised: first.openProgramme !== null }}
            onLineTest={studentSet.renew}
          />
        </aside>
      </div>
      <ReplyEditor
        replying={replying}
        drills={drills}
        helps={helps}
        facts={facts}
        clips={submission.clips}
        marking={view}
        canWork={canWork}
        stage={view === null ? null : { clipId: view.clipId, frame: view.frame }}
        onSend={replying.send}
        onLeft={onLeft}
        submissionId={submission.id}
        talkMs={talkMs}
      />
      {role === 'manager' && kept !== undefined && <KeepModel key={kept} clipId={kept} />}
      <FilmAgain canWork={canWork} busy={held.busy} offered={offered} onAsk={held.filmAgain} />
      <PutRight
        submission={submission}
        clipId={clips[at]?.clip.id ?? null}
        open={putRight}
        setOpen={setPutRight}
        canWork={canWork}
        onSubmission={setSubmission}
      />
    </>
  );
}
