'use client';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import { type PhraseFactsHere, refilled } from './phrase-help.ts';
import { type Drill, type Offer, planFor, type ReplyForm } from './reply-form.ts';
import type { Start } from './use-helps.ts';

type Props = {
  starts: readonly Start[];
  form: ReplyForm;
  drills: readonly Drill[];
  offer: Offer | null;
  help: PhraseFactsHere;
  canWork: boolean;
  onBegin: (next: Partial<ReplyForm>) => void;
};

/** Replies kept with the same cause: words filled from this swing, ticks and drill taken over to begin with. */
export function Starts({ starts, form, drills, offer, help, canWork, onBegin }: Props) {
  const fitting = starts.filter(({ cause }) => cause === form.cause);
  if (fitting.length === 0) return null;
  const nameOf = (start: Start) => drills.find(({ id }) => id === start.plan?.drillId)?.name ?? null;
  const wordsOf = (start: Start) =>
    refilled(help, { cause: start.cause, drillName: nameOf(start) }, start.words);
  const begin = (start: Start) => {
    const drill = drills.find(({ id }) => id === start.plan?.drillId);
    onBegin({
      words: wordsOf(start),
      setUpTicks: start.setUpTicks.slice(0, 3),
      ...(drill === undefined ? {} : { plan: planFor(drill, offer?.plan ?? start.plan) }),
    });
  };
  return (
    <details>
      <summary>{replyDeskWords.starts(fitting.length)}</summary>
      <ul className="stack tight">
        {fitting.map((start) => (
          <li key={start.id} className="stack tight">
            <p>{wordsOf(start)}</p>
            <p className="row">
              <button type="button" className="small-button" disabled={!canWork} onClick={() => begin(start)}>
                {replyDeskWords.beginFrom}
              </button>
              <span className="small soft">{replyDeskWords.startBy(start.by)}</span>
            </p>
          </li>
        ))}
      </ul>
    </details>
  );
}
