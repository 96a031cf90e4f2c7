import type { Reply } from '@ballfirst/contracts/client';
import { outcomeForStudent, outcomeNames } from './names.ts';

export type Tally = Reply<'readSubmission'>['tally'];
export type Outcome = keyof typeof outcomeNames;
export const outcomeOrder = ['solid', 'fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky'] as const;

/** How many balls were said something of. */
export const tappedBalls = (tally: Tally): number => outcomeOrder.reduce((sum, one) => sum + tally[one], 0);

/** A tally in words: "6 fat, 3 solid, 1 thin of 10", the commonest first. */
export const tallyInWords = (tally: Tally, reader: 'coach' | 'student' = 'coach'): string => {
  const names = reader === 'coach' ? outcomeNames : outcomeForStudent;
  const parts = outcomeOrder
    .filter((one) => tally[one] > 0)
    .sort((a, b) => tally[b] - tally[a])
    .map((one) => `${tally[one]} ${names[one].toLowerCase()}`);
  const unsaid = tally.balls - tappedBalls(tally);
  if (unsaid > 0) parts.push(`${unsaid} not said`);
  return `${parts.join(', ')} of ${tally.balls}${tally.counted ? '' : ', from memory'}`;
};
