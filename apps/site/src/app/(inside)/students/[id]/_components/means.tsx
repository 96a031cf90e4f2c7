import type { Reply } from '@ballfirst/contracts/client';
import { equipment } from '@ballfirst/library/constants';
import { meansWords } from '../../../../../words/means.ts';
import { FactList } from './fact-list.tsx';

/** With how much time and where the student practises; nothing where nothing was told. */
export function Means({ means }: { means: Reply<'readStudent'>['means'] }) {
  const { daysPerWeek, minutesPerDay, place, balls, equipment: things, pains } = means;
  const time = [
    ...(daysPerWeek === null ? [] : [meansWords.daysShort(daysPerWeek)]),
    ...(minutesPerDay === null ? [] : [meansWords.minutesShort(minutesPerDay)]),
  ].join(', ');
  const told: [name: string, value: string][] = [
    [meansWords.time, time],
    [meansWords.place, place === null ? '' : meansWords.placeNames[place]],
    [meansWords.balls, balls === null ? '' : String(balls)],
    [meansWords.atHand, things.map((id) => equipment[id]).join(', ')],
    [meansWords.hurts, pains.map((id) => meansWords.painNames[id]).join(', ')],
  ];
  const shown = told.filter(([, value]) => value !== '');
  if (shown.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="means-title">
      <h2 id="means-title">{meansWords.practises}</h2>
      <FactList facts={shown} />
    </section>
  );
}
