import type { Reply } from '@ballfirst/contracts/client';
import { toldMeans } from '../../../../../practice-means/told-means.ts';
import { meansWords } from '../../../../../words/means.ts';
import { FactList } from './fact-list.tsx';

/** With how much time and where the student practises; nothing where nothing was told. */
export function Means({ means }: { means: Reply<'readStudent'>['means'] }) {
  const shown = toldMeans(means);
  if (shown.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="means-title">
      <h2 id="means-title">{meansWords.practises}</h2>
      <FactList facts={shown} />
    </section>
  );
}
