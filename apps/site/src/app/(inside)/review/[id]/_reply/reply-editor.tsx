'use client';
import { causes } from '@ballfirst/library/causes';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { useRef, useState } from 'react';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { KeepStart } from '../../../../../starting-point/keep-start.tsx';
import { reviewWords } from '../../../../../words/review.ts';
import { GoesWith } from './goes-with.tsx';
import { Leaving } from './leaving.tsx';
import { OfferNote } from './offer-note.tsx';
import type { PhraseFactsHere } from './phrase-help.ts';
import { PhrasesPart } from './phrases-part.tsx';
import { PlanFields } from './plan-fields.tsx';
import { ReplyConflict } from './reply-conflict.tsx';
import styles from './reply-editor.module.css';
import { type Drill, drillsFor, missingOf, type ReplyForm } from './reply-form.ts';
import { ReplyFrames } from './reply-frames.tsx';
import { ReplyPreview } from './reply-preview.tsx';
import { SetUpAndMore } from './set-up-and-more.tsx';
import { Starts } from './starts.tsx';
import type { Helps } from './use-helps.ts';
import type { Replying } from './use-reply.ts';
import { WordsField } from './words-field.tsx';

type Props = {
  replying: Replying;
  helps: Helps;
  /** What fills the phrases on this swing. */
  facts: PhraseFactsHere;
  drills: readonly Drill[];
  clips: Parameters<typeof ReplyPreview>[0]['clips'];
  marking: Parameters<typeof ReplyPreview>[0]['marking'];
  canWork: boolean;
  stage: { clipId: string; frame: number } | null;
  onSend: () => void;
  onLeft: () => void;
  submissionId: string;
  /** How long the recorded talk-through is; null: none is recorded. */
  talkMs: number | null;
};
const stateWords = {
  saved: reviewWords.draftSaved,
  unsaved: reviewWords.unsaved,
  saving: reviewWords.saving,
  sending: reviewWords.sending,
  leaving: reviewWords.leavesNow,
  sent: reviewWords.sent,
} as const;
const missingWords = { nothing: reviewWords.nothingToSend, cause: reviewWords.drillNeedsCause } as const;

/** The reply: words, pictures, ticks, one drill, its cautions, preview, sending. */
export function ReplyEditor(props: Props) {
  const { replying, helps, facts, drills, clips, marking, stage, onSend, onLeft, submissionId } = props;
  const { form, state, replyId, leavesAt, trouble, change, saveNow, undo } = replying;
  const { hand } = facts.submission.student;
  const canWork = props.canWork && state !== 'leaving';
  const field = useRef<HTMLTextAreaElement>(null);
  const [preview, setPreview] = useState(false);
  const set = (next: Partial<ReplyForm>) => change((now) => ({ ...now, ...next }));
  const missing = missingOf(form);
  const cause = causes.find(({ id }) => id === form.cause) ?? null;
  const fitting = drillsFor(form.cause, drills);
  const offer = helps.offer?.cause === form.cause ? helps.offer : null;
  const drillName = drills.find(({ id }) => id === form.plan?.drillId)?.name ?? null;
  const busy = state === 'sending' || state === 'leaving' || state === 'sent';
  const phrased = { help: facts, cause: form.cause, drillName };
  return (
    <section className={`stack ${styles.editor}`} aria-labelledby="reply-title">
      <div>
        <h2 id="reply-title">{reviewWords.replyTitle}</h2>
        <p className="soft small">{reviewWords.replyLead}</p>
      </div>
      {cause !== null && (
        <p>
          <strong>{cause.name}.</strong> {wordsForHand(cause.forStudent, hand)}
        </p>
      )}
      <div className={styles.columns}>
        <div className="stack">
          <Starts
            starts={helps.starts}
            form={form}
            drills={drills}
            offer={offer}
            help={facts}
            canWork={canWork}
            onBegin={set}
          />
          <WordsField
            words={form.words}
            canWork={canWork}
            field={field}
            onWords={(words) => set({ words })}
          />
          <PhrasesPart
            {...phrased}
            words={form.words}
            field={field}
            canWork={canWork}
            onWords={(words) => set({ words })}
            onPhrases={() => void helps.readPhrases()}
          />
          <ReplyFrames
            frames={form.frames}
            canWork={canWork}
            stage={stage}
            onFrames={(frames) => set({ frames })}
          />
        </div>
        <div className="stack">
          <SetUpAndMore form={form} fault={facts.fault} canWork={canWork} onChange={set} />
          <PlanFields
            plan={form.plan}
            drills={fitting.length > 0 ? fitting : drills}
            every={drills}
            offered={offer?.plan ?? null}
            canWork={canWork}
            onPlan={(plan) => set({ plan })}
          />
          <OfferNote offer={offer} />
          <GoesWith form={form} films={helps.films} talkMs={props.talkMs} canWork={canWork} onChange={set} />
        </div>
      </div>
      <ReplyConflict replying={replying} />
      {preview && (
        <ReplyPreview
          form={form}
          drills={drills}
          hand={hand}
          offer={offer}
          clips={clips}
          marking={marking}
          film={helps.films.find((one) => one.cause === form.teachingClip) ?? null}
          talkMs={form.withTalk ? props.talkMs : null}
        />
      )}
      {state === 'leaving' && (
        <Leaving submissionId={submissionId} leavesAt={leavesAt} onUndo={undo} onLeft={onLeft} />
      )}
      {state === 'sent' && replyId !== null && form.cause !== null && <KeepStart replyId={replyId} />}
      <TroubleNote trouble={trouble} />
      <div className="row">
        <button
          type="button"
          className="main"
          disabled={!canWork || busy || missing !== null || replying.theirs !== null}
          onClick={onSend}
        >
          {state === 'sending' ? reviewWords.sending : reviewWords.send}
        </button>
        <button type="button" aria-expanded={preview} onClick={() => setPreview(!preview)}>
          {reviewWords.preview}
        </button>
        <button type="button" className="plain" disabled={!canWork || busy} onClick={saveNow}>
          {reviewWords.saveDraft}
        </button>
        <span role="status" className="small soft">
          {missing === null ? stateWords[state] : missingWords[missing]}
        </span>
      </div>
    </section>
  );
}
