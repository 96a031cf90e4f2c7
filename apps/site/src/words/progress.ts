import type { Reply } from '@ballfirst/contracts/client';

type Progress = NonNullable<Reply<'readHome'>['progress']>;

export const verdictNames = {
  better: 'Better',
  'no-clear-change': 'No clear change',
  worse: 'Worse',
  'over-correcting': 'Over-correcting',
} satisfies Record<Progress['verdict'], string>;

export const progressWords = {
  title: 'Since your drill',
  coachTitle: 'Since the drill',
  between: 'Your swing of',
  and: 'against the one of',
} as const;
