'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { ownTrialWords } from '../../../../words/asking.ts';

type Trial = Reply<'readOwnTrial'>;

/** What it costs to go on, and the one tap that says so; nothing is charged by it. */
export function JoinBlock({ trial, onAsked }: { trial: Trial; onAsked: (trial: Trial) => void }) {
  const sending = useSending();
  if (trial.standing !== 'trial' && trial.standing !== 'lapsed') return null;
  const join = async () => {
    const done = await sending.run(() => answerOf(api.POST('/api/trial/join')));
    if (done !== null) onAsked(done.answer);
  };
  return (
    <section className="stack" aria-labelledby="after">
      <h2 id="after">{ownTrialWords.after}</h2>
      <p>
        {ownTrialWords.price(trial.priceWords)} <strong>{ownTrialWords.noCharge}</strong>
      </p>
      {trial.joinAskedAt === null ? (
        <>
          <TroubleNote trouble={sending.trouble} />
          <button type="button" className="main" disabled={sending.busy} onClick={join}>
            {sending.busy ? ownTrialWords.busy : ownTrialWords.join}
          </button>
          <p className="hint">{ownTrialWords.decline}</p>
        </>
      ) : (
        <p role="status" className="notice">
          {ownTrialWords.asked}
        </p>
      )}
    </section>
  );
}
