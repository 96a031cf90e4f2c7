'use client';
import { causes } from '@ballfirst/library/causes';
import { phrases } from '@ballfirst/library/phrases';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { useState } from 'react';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { tickNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { Leaving } from './leaving.tsx';
import { PlanFields } from './plan-fields.tsx';
import { ReplyConflict } from './reply-conflict.tsx';
import styles from './reply-editor.module.css';
import { type Drill, drillsFor, missingOf, type ReplyForm } from './reply-form.ts';
import { ReplyFrames } from './reply-frames.tsx';
import { ReplyPreview } from './reply-preview.tsx';
import type { Replying } from './use-reply.ts';

type Props = {
  replying: Replying;
  drills: readonly Drill[];
  hand: 'right' | 'left';
  canWork: boolean;
  stage: { clipId: string; frame: number } | null;
  onSend: () => void;
  onLeft: () => void;
  submissionId: string;
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
  const { replying, drills, hand, stage, onSend, onLeft, submissionId } = props;
  const { form, state, leavesAt, trouble, change, saveNow, undo } = replying;
  const canWork = props.canWork && state !== 'leaving';
  const [preview, setPreview] = useState(false);
  const set = (next: Partial<ReplyForm>) => change((now) => ({ ...now, ...next }));
  const missing = missingOf(form);
  const count = form.words.trim().split(/\s+/).filter(Boolean).length;
  const cause = causes.find(({ id }) => id === form.cause) ?? null;
  const fitting = drillsFor(form.cause, drills);
  const busy = state === 'sending' || state === 'leaving' || state === 'sent';
  const toggle = (tick: keyof typeof tickNames, on: boolean) =>
    set({ setUpTicks: [...form.setUpTicks.filter((one) => one !== tick), ...(on ? [tick] : [])] });
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
          <div className="field">
            <label htmlFor="reply-words">{reviewWords.words}</label>
            <textarea
              id="reply-words"
              className={styles.words}
              maxLength={4000}
              disabled={!canWork}
              value={form.words}
              aria-describedby="reply-count"
              onChange={(event) => set({ words: event.target.value })}
            />
            <span id="reply-count" className="hint">
              {reviewWords.wordsCount(count)}
            </span>
          </div>
          <details>
            <summary>{reviewWords.phrases}</summary>
            <ul className={styles.phrases}>
              {phrases.map(({ id, text }) => (
                <li key={id}>
                  <button
                    type="button"
                    className="small-button"
                    disabled={!canWork}
                    onClick={() =>
                      set({ words: `${form.words.trimEnd()} ${wordsForHand(text, hand)}`.trim() })
                    }
                  >
                    {wordsForHand(text, hand)}
                  </button>
                </li>
              ))}
            </ul>
          </details>
          <ReplyFrames
            frames={form.frames}
            canWork={canWork}
            stage={stage}
            onFrames={(frames) => set({ frames })}
          />
        </div>
        <div className="stack">
          <fieldset disabled={!canWork}>
            <legend>{reviewWords.ticks}</legend>
            <div className="choices">
              {(['grip', 'handle', 'hips', 'ball'] as const).map((tick) => (
                <label key={tick} className="choice">
                  <input
                    type="checkbox"
                    checked={form.setUpTicks.includes(tick)}
                    disabled={!form.setUpTicks.includes(tick) && form.setUpTicks.length >= 3}
                    onChange={(event) => toggle(tick, event.target.checked)}
                  />
                  {tickNames[tick]}
                </label>
              ))}
            </div>
          </fieldset>
          <PlanFields
            plan={form.plan}
            drills={fitting.length > 0 ? fitting : drills}
            canWork={canWork}
            onPlan={(plan) => set({ plan })}
          />
        </div>
      </div>
      <ReplyConflict replying={replying} />
      {preview && <ReplyPreview form={form} drills={drills} hand={hand} />}
      {state === 'leaving' && (
        <Leaving submissionId={submissionId} leavesAt={leavesAt} onUndo={undo} onLeft={onLeft} />
      )}
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
