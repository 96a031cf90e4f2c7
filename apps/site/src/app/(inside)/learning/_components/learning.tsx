'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { When } from '../../../../times/when.tsx';
import { learningWords } from '../../../../words/learning.ts';
import { FaultTable } from './fault-table.tsx';
import { LearningSwitch } from './learning-switch.tsx';
import { Reset } from './reset.tsx';

type Props = { first: Reply<'readLearning'>; mayChange: boolean };

/** What an academy has learned, its switch and its new beginning. */
export function Learning({ first, mayChange }: Props) {
  const [learning, setLearning] = useState(first);
  const { busy, trouble, run } = useSending();
  const { on, blind, overruled, resetAt, faults } = learning;
  const swings = blind + overruled;

  const turn = async (next: boolean) => {
    const done = await run(() => answerOf(api.PUT('/api/settings/learning', { body: { on: next } })));
    if (done !== null) setLearning(done.answer);
  };
  const reset = async () => {
    const done = await run(() => answerOf(api.POST('/api/settings/learning/reset')));
    if (done !== null) setLearning(done.answer);
    return done !== null;
  };
  return (
    <>
      <LearningSwitch learning={learning} mayChange={mayChange} busy={busy} onTurn={turn} />
      {swings === 0 ? (
        <section className="stack tight">
          <h2>{learningWords.emptyTitle}</h2>
          <p>{learningWords.empty}</p>
          {!on && mayChange && <p>{learningWords.emptyOff}</p>}
        </section>
      ) : (
        <>
          <p>{learningWords.counted(swings, blind, overruled)}</p>
          {faults.map((one) => (
            <FaultTable key={one.fault} learned={one} />
          ))}
          <p className="hint">{learningWords.hint}</p>
        </>
      )}
      {resetAt !== null && (
        <p className="small soft">
          {learningWords.countedSince} <When at={resetAt} />
        </p>
      )}
      {mayChange && <Reset swings={swings} busy={busy} onReset={reset} />}
      <TroubleNote trouble={trouble} />
    </>
  );
}
