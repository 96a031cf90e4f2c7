'use client';
import { RungLadder } from '../../../../drill-card/rung-ladder.tsx';
import type { Programme } from '../../../../drill-card/rung-states.ts';
import { drillWords } from '../../../../words/reply.ts';
import { PracticeLog } from './practice-log.tsx';

type Props = {
  programme: Programme;
  second: NonNullable<Programme['second']>;
  onLogged: () => Promise<void>;
};

/** The drill that supports the first: its steps, and its own three taps. */
export function SecondPractice({ programme, second, onLogged }: Props) {
  const { drill, minutes, rung, done } = second;
  return (
    <section className="stack ruled" aria-labelledby="second-practised">
      <div className="stack tight">
        <p className="soft small">{drillWords.second(minutes)}</p>
        <h2 id="second-practised">{drill.name}</h2>
        <p>{drill.purpose}</p>
      </div>
      <RungLadder programme={{ rung, status: done ? 'done' : programme.status, drill }} full={false} />
      <PracticeLog
        key={`${programme.id}-${drill.id}`}
        programme={programme}
        second={second}
        onLogged={onLogged}
      />
    </section>
  );
}
