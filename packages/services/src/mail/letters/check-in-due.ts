import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { cautionsOf } from './cautions-of.ts';
import { type Composed, compose } from './compose.ts';

/** To a student whose check-in has come due. */
export const checkInDueLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  readonly checkInId: string;
  readonly asks: 'practice' | 'clip';
  readonly drill: { readonly id: string; readonly name: string };
  readonly hand: PlayingHand;
}): Composed => {
  const clip = data.asks === 'clip';
  return compose({
    subject: clip ? 'Time to film your swing again' : 'How is your practice going?',
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      `You have had some days with your drill: ${data.drill.name}.`,
      clip
        ? 'Film one usual swing from where the phone stood last time, and tap your last ten balls. That shows whether it works.'
        : 'Write down your last practice: how many balls, and how many were clean.',
    ],
    cautions: cautionsOf(data.drill.id, data.hand),
    page: clip
      ? { does: 'Send the swing', url: `${data.publicUrl}/send?check-in=${data.checkInId}` }
      : { does: 'Log your practice', url: `${data.publicUrl}/home` },
  });
};
