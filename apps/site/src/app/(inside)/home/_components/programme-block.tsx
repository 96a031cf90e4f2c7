'use client';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { DrillCard } from '../../../../drill-card/drill-card.tsx';
import { RungLadder } from '../../../../drill-card/rung-ladder.tsx';
import type { Programme } from '../../../../drill-card/rung-states.ts';
import { When } from '../../../../times/when.tsx';
import { homeWords } from '../../../../words/home.ts';
import { Entries } from './entries.tsx';
import { Overdue } from './overdue.tsx';
import { PracticeLog } from './practice-log.tsx';
import { SecondPractice } from './second-practice.tsx';

type Props = { programme: Programme; onLogged: () => Promise<void>; hand: PlayingHand };

/** The drill that runs: what it is for, its steps, logging, and what was logged. */
export function ProgrammeBlock({ programme, onLogged, hand }: Props) {
  const { drill, nextCheckIn } = programme;
  return (
    <section className="stack ruled" aria-labelledby="programme-title">
      <div className="stack tight">
        <p className="soft small">
          {homeWords.programmeTitle}, {homeWords.minutes(programme.weeklyMinutes)}
        </p>
        <h2 id="programme-title">{drill.name}</h2>
        <p>{drill.purpose}</p>
        {nextCheckIn !== null && programme.status === 'open' && (
          <p className="small">
            {homeWords.checkIn[nextCheckIn.asks]}: <When at={nextCheckIn.dueAt} as="day" />
            <Overdue dueAt={nextCheckIn.dueAt} />
          </p>
        )}
      </div>
      <RungLadder programme={programme} full={false} />
      <PracticeLog key={programme.id} programme={programme} onLogged={onLogged} />
      {programme.second !== null && (
        <SecondPractice programme={programme} second={programme.second} onLogged={onLogged} />
      )}
      <details>
        <summary>{homeWords.drillCard}</summary>
        <DrillCard programme={programme} hand={hand} />
      </details>
      <Entries programme={programme} />
    </section>
  );
}
