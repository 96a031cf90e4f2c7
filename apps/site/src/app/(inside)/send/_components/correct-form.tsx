'use client';
import { AnsweredProblem, answerOf, ifMatch } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { handNames } from '../../../../words/names.ts';
import { sendWords } from '../../../../words/send.ts';
import { BallsStep } from './balls-step.tsx';
import { CorrectClips } from './correct-clips.tsx';
import { correctDraftOf, correctionOf } from './correction.ts';
import type { Submission } from './use-submission.ts';

type Props = {
  submission: Submission;
  onSaved: (submission: Submission) => void;
  onStale: () => Promise<void>;
};

/** The answers of a sent swing, open to be changed; only what was changed is sent. */
export function CorrectForm({ submission, onSaved, onStale }: Props) {
  const [draft, setDraft] = useState(() => correctDraftOf(submission));
  const sending = useSending();
  const correction = correctionOf(submission, draft);
  const empty = draft.taps.length === 0;

  const save = async () => {
    if (correction === null) return;
    const params = { path: { id: submission.id }, header: { 'If-Match': ifMatch(submission.version) } };
    const patch = async () => {
      try {
        return await answerOf(api.PATCH('/api/submissions/{id}', { params, body: correction }));
      } catch (error) {
        if (error instanceof AnsweredProblem && error.code === 'changed-meanwhile') await onStale();
        throw error;
      }
    };
    const done = await sending.run(patch);
    if (done !== null) onSaved(done.answer);
  };
  return (
    <div className="stack">
      <RadioRow
        legend={sendWords.correctHand}
        names={handNames}
        order={['right', 'left']}
        value={draft.hand}
        onChange={(hand) => setDraft((now) => ({ ...now, hand }))}
      />
      <CorrectClips clips={draft.clips} onChange={(clips) => setDraft((now) => ({ ...now, clips }))} />
      <BallsStep draft={draft} change={setDraft} />
      <TroubleNote trouble={sending.trouble} />
      {empty && <p className="hint">{sendWords.tapOne}</p>}
      {correction === null && <p className="hint">{sendWords.correctNothing}</p>}
      <button
        type="button"
        className="main"
        disabled={sending.busy || correction === null || empty}
        onClick={save}
      >
        {sending.busy ? sendWords.correctBusy : sendWords.correctSave}
      </button>
    </div>
  );
}
