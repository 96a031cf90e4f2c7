import type { StudentLine } from '../student-line.ts';

/** Tannhollow: opened some days ago, and nearly empty. */
export const tannhollowStudents: readonly StudentLine[] = [
  {
    key: 'gesa',
    name: 'Gesa Thornquist',
    hand: 'right',
    ageGroup: 'adult',
    joinedDaysAgo: 5,
    waiting: {
      when: { block: 'tomorrow' },
      clips: ['handle-back'],
      club: '9-iron',
      lie: 'fairway',
      misses: { fat: 4, thin: 2 },
      note: '',
    },
  },
  { key: 'lars', name: 'Lars Ebbesund', hand: 'right', ageGroup: 'adult', joinedDaysAgo: 1.2 },
];
