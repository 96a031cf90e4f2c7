import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { cautionsOf } from './cautions-of.ts';
import { type Composed, compose } from './compose.ts';

/** To a student whose reply was corrected. */
export const replyCorrectedLetter = (data: {
  readonly name: string;
  readonly coachName: string;
  readonly academyName: string;
  readonly url: string;
  readonly drillId: string | null;
  readonly hand: PlayingHand;
}): Composed =>
  compose({
    subject: `${data.coachName} has corrected the reply to your swing`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      `${data.coachName} has put something right in your reply. Your drill stays the same; what it said before is kept on the page.`,
    ],
    cautions: cautionsOf(data.drillId, data.hand),
    page: { does: 'Read it again', url: data.url },
  });
