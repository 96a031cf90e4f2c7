'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { MeansForm } from '../../../../practice-means/means-form.tsx';
import { toldMeans } from '../../../../practice-means/told-means.ts';
import { meansWords } from '../../../../words/means.ts';

type Means = Reply<'readMeans'>;

const saidNothing = (means: Means): boolean => {
  const { usualMiss, goal, body } = means;
  return toldMeans(means).length === 0 && [usualMiss, goal, body].every((one) => one === null);
};

/** What a new student has to practise with, asked once, while the first video goes up. Nothing of it is needed to send. */
export function MeansBlock({ studentId }: { studentId: string }) {
  const [means, setMeans] = useState<Means | null>(null);
  const [saved, setSaved] = useState(false);
  useEffect(() => {
    let over = false;
    answerOf(api.GET('/api/me/practice-means')).then(
      (found) => !over && setMeans(found),
      () => undefined,
    );
    return () => {
      over = true;
    };
  }, []);
  if (saved) return <p role="status">{meansWords.saved}</p>;
  if (means === null || !saidNothing(means)) return null;
  return (
    <section className="stack ruled" aria-labelledby="means-title">
      <h2 id="means-title">{meansWords.title}</h2>
      <p>{meansWords.lead}</p>
      <MeansForm studentId={studentId} first={means} onSaved={() => setSaved(true)} />
    </section>
  );
}
