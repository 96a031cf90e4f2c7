'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import type { MeansForm } from '../../../../practice-means/means-form.tsx';
import { toldMeans } from '../../../../practice-means/told-means.ts';
import { meansWords } from '../../../../words/means.ts';

type Means = Reply<'readMeans'>;
type Asking = { means: Means; Form: typeof MeansForm };

/** Only whom it is put to pays for the form. */
const readForm = async () => (await import('../../../../practice-means/means-form.tsx')).MeansForm;

const saidNothing = (means: Means): boolean => {
  const { usualMiss, goal, body } = means;
  return toldMeans(means).length === 0 && [usualMiss, goal, body].every((one) => one === null);
};

/** What a new student has to practise with, asked once, while the first video goes up. Nothing of it is needed to send. */
export function MeansBlock({ studentId }: { studentId: string }) {
  const [asking, setAsking] = useState<Asking | null>(null);
  const [saved, setSaved] = useState(false);
  useEffect(() => {
    let over = false;
    const ask = async () => {
      const means = await answerOf(api.GET('/api/me/practice-means'));
      if (!saidNothing(means)) return;
      const Form = await readForm();
      if (!over) setAsking({ means, Form });
    };
    // What cannot be asked now is asked at the next swing.
    ask().catch(() => undefined);
    return () => {
      over = true;
    };
  }, []);
  if (saved) return <p role="status">{meansWords.saved}</p>;
  if (asking === null) return null;
  const { means, Form } = asking;
  return (
    <section className="stack ruled" aria-labelledby="means-title">
      <h2 id="means-title">{meansWords.title}</h2>
      <p>{meansWords.lead}</p>
      <Form studentId={studentId} first={means} onSaved={() => setSaved(true)} />
    </section>
  );
}
