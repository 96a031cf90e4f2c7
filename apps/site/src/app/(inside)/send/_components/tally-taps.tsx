'use client';
import { TenBalls } from '../../../../drawings/ten-balls.tsx';
import { outcomeForStudent } from '../../../../words/names.ts';
import { sendWords } from '../../../../words/send.ts';
import type { Outcome } from '../../../../words/tally.ts';
import { type BallsDraft, mostBalls, setBalls, takeBack, tallyOf, tap } from './draft.ts';
import { largeButtons, otherButtons } from './tally-buttons.ts';
import styles from './tally-taps.module.css';

type Props<D extends BallsDraft> = { draft: D; change: (next: (draft: D) => D) => void };

/** Ten balls on four large buttons. The buttons rest when every ball of the set is tapped. */
export function TallyTaps<D extends BallsDraft>({ draft, change }: Props<D>) {
  const others = otherButtons(draft.club);
  const tally = tallyOf(draft);
  const full = draft.taps.length >= draft.balls;
  const button = (one: Outcome, className: string | undefined) => (
    <button
      key={one}
      type="button"
      className={className}
      disabled={full}
      onClick={() => change((now) => tap(now, one))}
    >
      <span>{outcomeForStudent[one]}</span>
      <span className={styles.count}>{tally[one]}</span>
    </button>
  );
  return (
    <fieldset className="stack tight">
      <legend>{sendWords.tallyTitle}</legend>
      <p className="hint">{sendWords.tallyHint}</p>
      <div className={styles.large}>{largeButtons(draft.club).map((one) => button(one, styles.tap))}</div>
      <details open={others.some((one) => tally[one] > 0)}>
        <summary>{sendWords.more}</summary>
        <div className={styles.others}>{others.map((one) => button(one, styles.small))}</div>
      </details>
      <div className={styles.result}>
        <TenBalls tally={tally} reader="student" />
        <p role="status" className="small">
          {full ? sendWords.full(draft.balls) : sendWords.tapped(draft.taps.length, draft.balls)}
        </p>
      </div>
      <div className="row apart">
        <button type="button" disabled={draft.taps.length === 0} onClick={() => change(takeBack)}>
          {sendWords.undo}
        </button>
        <fieldset className="row">
          <legend className="unseen">{sendWords.ballsInSet}</legend>
          <span aria-hidden="true" className="small">
            {sendWords.ballsInSet}
          </span>
          <button
            type="button"
            aria-label={sendWords.fewer}
            disabled={draft.balls <= Math.max(1, draft.taps.length)}
            onClick={() => change((now) => setBalls(now, now.balls - 1))}
          >
            −
          </button>
          <output>{draft.balls}</output>
          <button
            type="button"
            aria-label={sendWords.oneMore}
            disabled={draft.balls >= mostBalls}
            onClick={() => change((now) => setBalls(now, now.balls + 1))}
          >
            +
          </button>
        </fieldset>
      </div>
      {draft.taps.length > 0 && !full && (
        <p className="hint">{sendWords.notTapped(draft.balls - draft.taps.length)}</p>
      )}
    </fieldset>
  );
}
