import type { Reply } from '@ballfirst/contracts/client';
import { equipment } from '@ballfirst/library/constants';
import { meansWords } from '../words/means.ts';

type Told = Pick<
  Reply<'readMeans'>,
  'daysPerWeek' | 'minutesPerDay' | 'place' | 'balls' | 'equipment' | 'pains'
>;

/** With how much time, where and with what a student practises, name and value; nothing where nothing was told. */
export const toldMeans = (means: Told): [name: string, value: string][] => {
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
  return told.filter(([, value]) => value !== '');
};
