import type { Student } from '@ballfirst/db/generated/client';
import { equipment } from '@ballfirst/library/constants';
import type { Means } from '@ballfirst/practice/means';

const onPlace = { mat: 'on a mat', grass: 'on grass', home: 'at home' } as const;

type Told = Pick<Student, 'place' | 'daysPerWeek' | 'minutesPerDay' | 'balls' | 'equipment'>;

/** Under which means a programme was chosen, in a coach's sentence; what was not told is called so. */
export const meansWords = (means: Means, told: Told): string => {
  const guess = (value: unknown): string => (value === null ? ' (not told)' : '');
  const parts = [
    `${means.daysPerWeek} ${means.daysPerWeek === 1 ? 'day' : 'days'} a week${guess(told.daysPerWeek)}`,
    `${means.minutes} minutes a day${guess(told.minutesPerDay)}`,
    `${onPlace[means.place]}${guess(told.place)}`,
    means.balls === undefined
      ? 'balls as needed (not told)'
      : means.balls === 0
        ? 'no balls'
        : `${means.balls} balls`,
    means.equipment === undefined
      ? 'the usual things at hand'
      : `at hand: ${means.equipment.map((id) => equipment[id]).join(', ')}`,
    means.pains.length === 0
      ? 'nothing told that hurts'
      : `sparing ${means.pains.map((pain) => pain.replaceAll('-', ' ')).join(', ')}`,
    `${means.ageGroup}`,
  ];
  return `${parts.join('; ')}.`;
};
