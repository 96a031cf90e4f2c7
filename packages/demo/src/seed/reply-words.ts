import { wordsForHand } from '@ballfirst/library/words-for-hand';
import type { Answer } from './story.ts';

/** What a coach found, in a sentence or two, by cause. */
const found: Readonly<Record<string, string>> = {
  'hang-back':
    'Your weight stays over the {trail} foot as you start down, so the club reaches the ground before the ball. Start every swing this week already on your {lead} foot.',
  'sway-away':
    'Your hips drift away from the target going back, and the bottom of the swing goes with them. Turn over your {trail} hip as if in a barrel, then brush the line.',
  'handle-back':
    'At the start your hands are behind the ball. Put the handle in front of the inside of your {lead} thigh before anything moves, then swing as you always do.',
  'hips-back-at-address':
    'You stand with your hips towards the {trail} foot before you begin. Set your belt half-way between your ankles; it will feel as if you lean on the target.',
  'thrown-early':
    'The club is thrown early on the way down, as if to help the ball up. Let the handle lead a little longer and brush the ground ahead of the ball.',
};
const opening: readonly string[] = [
  'Good: your set-up is quiet and your head stays still. One thing first.',
  'Your rhythm is lovely, keep it. One thing first.',
  'Well filmed, thank you. One thing first.',
  'Nice balance at the end. One thing first.',
];
const again: Readonly<Record<Answer['course'], string>> = {
  better:
    'This is better: look at the two pictures, then and now. Stay with the same thing, a little stronger, and leave everything else alone.',
  plateau:
    'No clear change yet, and that is no fault of yours: ten balls tell little. We stay with one thing and make it plainer.',
  worse:
    'It has moved the wrong way since last time, so we go back a step: no ball for a few days, slow brushes only.',
  'over-correcting':
    'The fat ones are nearly gone and thin ones came instead: the drill works, it has only gone a little too far. Ease off by half.',
};
const closing =
  'Thin shots are fine for now, they mean it works. Stop if anything hurts, and keep the place around you clear.';

/** The words of a coach to this student: what is good, the one thing, what to expect. */
export const replyWords = (answer: Answer, hand: 'right' | 'left'): string => {
  const cause = found[answer.cause] ?? '';
  const start =
    answer.number === 0 ? opening[answer.at.getUTCMinutes() % opening.length] : again[answer.course];
  return wordsForHand(`${start ?? ''} ${cause} ${closing}`, hand);
};
