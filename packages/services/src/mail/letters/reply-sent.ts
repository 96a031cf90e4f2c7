import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { cautionsOf } from './cautions-of.ts';
import { type Composed, compose } from './compose.ts';

/** To a student whose swing has been answered. The coach's own words stay on the page. */
export const replySentLetter = (data: {
  readonly name: string;
  readonly coachName: string;
  readonly academyName: string;
  readonly publicUrl: string;
  readonly replyId: string;
  readonly hand: PlayingHand;
  /** The one cause in one sentence, with left and right put in for this player; null where none was named. */
  readonly sentence: string | null;
  readonly drill: { readonly id: string; readonly name: string } | null;
}): Composed =>
  compose({
    subject: `${data.coachName} has answered your swing`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      `${data.coachName} has looked at your swing.`,
      ...(data.sentence === null ? [] : [data.sentence]),
      ...(data.drill === null ? [] : [`Your drill: ${data.drill.name}. How to set it up is on the page.`]),
    ],
    cautions: cautionsOf(data.drill?.id ?? null, data.hand),
    page: { does: 'Read the reply', url: `${data.publicUrl}/replies/${data.replyId}` },
  });
