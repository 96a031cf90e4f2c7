import type { Reply } from '@ballfirst/contracts/client';

type Impact = NonNullable<NonNullable<Reply<'readClip'>['suggestion']>['impact']>;

const sure = {
  likely: 'likely',
  possible: 'possible',
  unsure: 'unsure',
} as const satisfies Record<Impact['confidence'], string>;

const othersOf = (others: number): string => {
  if (others === 0) return '';
  return others === 1 ? '; one more sound is like it' : `; ${others} more sounds are like it`;
};

/** Where the machine would look first: words that never say more than it knows. */
export const suggestedWords = {
  title: 'Where to look first',
  /** "The sound says impact here: frame 121 ± 1; likely" */
  impact: ({ frame, uFrames, confidence, others }: Impact): string =>
    `The sound says impact here: frame ${frame + 1} ± ${uFrames}; ${sure[confidence]}${othersOf(others)}`,
  strip: 'The swing in small pictures',
  frame: (frame: number): string => `Show frame ${frame}`,
} as const;
