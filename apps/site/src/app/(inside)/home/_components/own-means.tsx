'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { MeansForm } from '../../../../practice-means/means-form.tsx';
import { toldMeans } from '../../../../practice-means/told-means.ts';
import { meansWords } from '../../../../words/means.ts';

type Means = Reply<'readMeans'>;

/** How the student practises, as told, and the way to change it or take it back at any time. */
export function OwnMeans({ studentId }: { studentId: string }) {
  const [means, setMeans] = useState<Means | null>(null);
  const [open, setOpen] = useState(false);
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
  if (means === null) return null;
  const told = toldMeans(means);
  const about: [name: string, value: string][] = [
    ...told,
    ...(means.goal === null ? [] : [[meansWords.goal, means.goal] satisfies [string, string]]),
    ...(means.body === null ? [] : [[meansWords.bodyShort, means.body] satisfies [string, string]]),
  ];
  const kept = (next: Means) => {
    setMeans(next);
    setOpen(false);
    setSaved(true);
  };
  return (
    <section className="stack tight" aria-labelledby="own-means">
      <h2 id="own-means">{meansWords.own}</h2>
      {!open && about.length === 0 && <p className="soft">{meansWords.ownNone}</p>}
      {!open && about.length > 0 && (
        <ul className="stack tight">
          {about.map(([name, value]) => (
            <li key={name} className="small">
              <span className="soft">{name}:</span> {value}
            </li>
          ))}
        </ul>
      )}
      <p role="status" className="small">
        {saved && !open && meansWords.ownSaved}
      </p>
      {open ? (
        <>
          <MeansForm studentId={studentId} first={means} onSaved={kept} />
          <p>
            <button type="button" className="plain" onClick={() => setOpen(false)}>
              {meansWords.back}
            </button>
          </p>
        </>
      ) : (
        <p>
          <button type="button" onClick={() => setOpen(true)}>
            {about.length === 0 ? meansWords.tell : meansWords.change}
          </button>
        </p>
      )}
    </section>
  );
}
