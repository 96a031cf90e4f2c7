'use client';
import { AnsweredProblem, answerOf, type Body, ifMatch } from '@ballfirst/contracts/client';
import { clubs, hands, swingLengths, views } from '@ballfirst/swing/marks/marks';
import { useEffect, useRef } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { clubNames, handNames, swingLengthNames, viewNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './put-right.module.css';
import type { Submission } from './use-claim.ts';

type Props = {
  submission: Submission;
  clipId: string | null;
  open: boolean;
  setOpen: (open: boolean) => void;
  canWork: boolean;
  onSubmission: (now: Submission) => void;
};

const settingOf = ({ club, student, clips }: Submission): string =>
  JSON.stringify([club, student.hand, clips.map(({ id, view, swingLength }) => [id, view, swingLength])]);
const sameSetting = (a: Submission, b: Submission): boolean => settingOf(a) === settingOf(b);

/** View, hand, club and swing length as they really were: each change is stored at once and everything computed anew. */
export function PutRight({ submission, clipId, open, setOpen, canWork, onSubmission }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const sending = useSending();
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  const clip = submission.clips.find(({ id }) => id === clipId);
  const path = { id: submission.id };
  const correct = (body: Body<'correctSubmission'>) =>
    sending
      .run(async () => {
        const over = (version: number) => {
          const params = { path, header: { 'If-Match': ifMatch(version) } };
          return answerOf(api.PATCH('/api/submissions/{id}', { params, body }));
        };
        try {
          return await over(submission.version);
        } catch (error) {
          if (!(error instanceof AnsweredProblem) || error.code !== 'changed-meanwhile') throw error;
          // What it is now is shown before anything is tried again, but a claim alone is no other setting.
          const now = await answerOf(api.GET('/api/submissions/{id}', { params: { path } }));
          if (sameSetting(submission, now)) return await over(now.version);
          onSubmission(now);
          throw error;
        }
      })
      .then((done) => done !== null && onSubmission(done.answer));
  // Not while it is stored: the list would lose the keyboard.
  const rest = !canWork;
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby="put-right-title"
      onClose={() => setOpen(false)}
    >
      <div className="stack">
        <h2 id="put-right-title">{reviewWords.putRightTitle}</h2>
        <p className="small soft">{canWork ? reviewWords.putRightLead : reviewWords.claimFirst}</p>
        {clip !== undefined && (
          <>
            <SelectField
              label={reviewWords.view}
              names={viewNames}
              order={views}
              value={clip.view}
              disabled={rest}
              onChange={(view) => correct({ clips: [{ id: clip.id, view }] })}
            />
            <SelectField
              label={reviewWords.swingLength}
              names={swingLengthNames}
              order={swingLengths}
              value={clip.swingLength}
              disabled={rest}
              onChange={(swingLength) => correct({ clips: [{ id: clip.id, swingLength }] })}
            />
          </>
        )}
        <SelectField
          label={reviewWords.hand}
          names={handNames}
          order={hands}
          value={submission.student.hand}
          disabled={rest}
          onChange={(hand) => correct({ hand })}
        />
        <SelectField
          label={reviewWords.club}
          names={clubNames}
          order={clubs}
          value={submission.club}
          disabled={rest}
          onChange={(club) => correct({ club })}
        />
        <TroubleNote trouble={sending.trouble} />
        <button type="button" onClick={() => setOpen(false)}>
          {reviewWords.close}
        </button>
      </div>
    </dialog>
  );
}
