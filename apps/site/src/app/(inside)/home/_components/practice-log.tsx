'use client';
import { useEffect, useRef } from 'react';
import type { Programme } from '../../../../drill-card/rung-states.ts';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { SelectField } from '../../../../shell/select-field.tsx';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { rungNames, spelt } from '../../../../words/names.ts';
import { ladderWords, practiceWords } from '../../../../words/practice.ts';
import { CountField } from './count-field.tsx';
import { practiceBody, withBalls } from './practice-draft.ts';
import { usePractice } from './use-practice.ts';
import { VerdictNote } from './verdict-note.tsx';

type Props = {
  programme: Programme;
  /** The drill that is logged here, and its heading; the first one where it is not given. */
  second?: NonNullable<Programme['second']>;
  onLogged: () => Promise<void>;
};

const pains = ['none', 'new', 'worse'] as const;

/** Practice in three taps: how many were clean, whether anything hurt, log. Step and balls are filled in. */
export function PracticeLog({ programme, second, onLogged }: Props) {
  const practised = second ?? programme;
  const { draft, change, log, logged, again, busy, trouble, waits } = usePractice(
    programme,
    practised,
    onLogged,
  );
  const id = second === undefined ? 'practice' : 'second-practice';
  const title = second === undefined ? practiceWords.title : practiceWords.secondTitle(second.drill.name);
  const answer = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (logged !== null) answer.current?.focus();
  }, [logged]);

  const { ladder, ballsAtMost } = practised.drill;
  const rung = ladder.find(({ id }) => id === draft.rung);
  const most = Math.min(90, ballsAtMost);
  const hurts = draft.pain === 'new' || draft.pain === 'worse';

  if (logged !== null) {
    return (
      <section id={id} className="stack" aria-label={title}>
        <div ref={answer} tabIndex={-1}>
          <VerdictNote entry={logged.entry} />
        </div>
        {logged.programme.status === 'open' && (
          <p>
            <button type="button" onClick={again}>
              {practiceWords.again}
            </button>
          </p>
        )}
      </section>
    );
  }
  if (programme.status !== 'open') {
    return programme.status === 'held' && second === undefined ? (
      <p className="notice safety">{practiceWords.held}</p>
    ) : null;
  }
  return (
    <section id={id} className="stack" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      <SelectField
        label={practiceWords.rung}
        order={ladder.map(({ id }) => id)}
        names={Object.fromEntries(ladder.map(({ id }) => [id, rungNames[id] ?? spelt(id)]))}
        value={draft.rung}
        onChange={(id) =>
          change((now) => ({
            ...now,
            rung: id,
            balls: ladder.find((one) => one.id === id)?.balls ?? now.balls,
            clean: null,
          }))
        }
      />
      {rung !== undefined && (
        <p className="small">
          <strong>{ladderWords.clean}</strong> {rung.clean}
        </p>
      )}
      <CountField
        label={practiceWords.balls(rung?.ball ?? true)}
        value={draft.balls}
        most={most}
        onChange={(balls) => change((now) => withBalls(now, balls, most))}
      />
      <CountField
        label={practiceWords.clean}
        value={draft.clean}
        most={draft.balls}
        least={0}
        cells={draft.balls <= 12}
        onChange={(clean) => change((now) => ({ ...now, clean }))}
      />
      <label className="choice">
        <input
          type="checkbox"
          checked={draft.filmed}
          onChange={(event) => change((now) => ({ ...now, filmed: event.target.checked }))}
        />
        {practiceWords.filmed}
      </label>
      {rung?.filmed === true && !draft.filmed && <p className="hint">{practiceWords.filmedNeeded}</p>}
      <RadioRow
        legend={practiceWords.pain}
        names={practiceWords.painChoices}
        order={pains}
        value={draft.pain}
        onChange={(pain) => change((now) => ({ ...now, pain }))}
      />
      <div role="alert">{hurts && <p className="notice safety">{practiceWords.painCaution}</p>}</div>
      {waits ? (
        <p role="alert" className="notice look">
          {practiceWords.offline}
        </p>
      ) : (
        <TroubleNote trouble={trouble} />
      )}
      <div className="stack tight">
        <button type="button" className="main" disabled={busy || practiceBody(draft) === null} onClick={log}>
          {busy ? practiceWords.logging : practiceWords.log}
        </button>
        {practiceBody(draft) === null && <p className="hint">{practiceWords.tapClean}</p>}
      </div>
    </section>
  );
}
