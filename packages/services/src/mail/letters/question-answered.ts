import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { cautionsOf } from './cautions-of.ts';
import { type Composed, compose } from './compose.ts';

/** To a student whose question a coach has answered. */
export const questionAnsweredLetter = (data: {
  readonly name: string;
  readonly coachName: string;
  readonly academyName: string;
  readonly url: string;
  readonly hand: PlayingHand;
}): Composed =>
  compose({
    subject: `${data.coachName} has answered your question`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [`${data.coachName} has answered what you asked back about your reply.`],
    cautions: cautionsOf(null, data.hand),
    page: { does: 'Read the answer', url: data.url },
  });
