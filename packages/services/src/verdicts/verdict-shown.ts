import { faultById } from '@ballfirst/library/faults';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';
import { verdictWords } from '@ballfirst/progress/verdict';
import type { Reply } from '../operation-types.ts';
import type { StudentVerdict } from './verdicts-of.ts';

/** A verdict as the screens show it: the sentence first, then the balls, then how sure. */
export const verdictShown = (
  verdict: StudentVerdict,
  hand: PlayingHand,
): NonNullable<Reply<'readHome'>['progress']> => {
  const { before, after } = verdict.balls;
  const fault = wordsForHand(faultById(verdict.faultId).studentName, hand);
  const counted = verdict.fault !== null;
  return {
    verdict: verdict.verdict,
    words: verdictWords(verdict.verdict),
    balls: counted
      ? `${fault}: ${before.fault} of ${before.balls} then, ${after.fault} of ${after.balls} now.`
      : null,
    basis:
      verdict.by === 'measurement'
        ? 'Judged by the measurement your coach chose, with its doubt.'
        : 'Judged by your balls alone; ten balls are few, so only a large change counts.',
    since: verdict.swings.before.toISOString(),
    latest: verdict.swings.after.toISOString(),
  };
};
