import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import type { Nudge } from '@ballfirst/progress/choose-nudge';
import { cautionsOf } from './cautions-of.ts';
import { type Composed, compose } from './compose.ts';

type Words = {
  readonly subject: string;
  readonly paragraphs: readonly string[];
  readonly does: string;
  readonly path: string;
};

export type NudgeData = {
  readonly kind: Nudge;
  /** What it is about, an id or a word. */
  readonly about: string;
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  readonly priceWords: string;
  readonly drill: { readonly id: string; readonly name: string } | null;
  readonly hand: PlayingHand;
  /** Where one click ends all reminders. */
  readonly stopUrl: string;
};

const wordsOf = (data: NudgeData): Words => {
  const drill = data.drill === null ? 'your drill' : `your drill, ${data.drill.name}`;
  const words: Readonly<Record<Nudge, Words>> = {
    'trial-ending': {
      subject: 'Your trial ends in a few days',
      paragraphs: [
        'Your page shows what you sent, what your coach found, and how your last ten balls compare with the first.',
        `If you would like to go on: ${data.priceWords}. Nothing is charged unless you join; your replies stay readable either way.`,
      ],
      does: 'See your trial',
      path: '/home',
    },
    'check-in-reminder': {
      subject: 'Still waiting for your swing',
      paragraphs: [
        `Your coach would like to see whether ${drill} works.`,
        'One usual swing is enough, from where the phone stood last time, and your last ten balls.',
      ],
      does: 'Send the swing',
      path: `/send?check-in=${data.about}`,
    },
    'film-again': {
      subject: 'Your coach needs another clip',
      paragraphs: [
        'The last clip could not be used; your page says why, with a drawing of where to stand the phone.',
        'The ten balls you tapped are kept.',
      ],
      does: 'Film it again',
      path: '/home',
    },
    'reply-unread': {
      subject: 'Your reply is waiting',
      paragraphs: ['Your coach has answered your swing. It takes two minutes to read.'],
      does: 'Read the reply',
      path: `/replies/${data.about}`,
    },
    'first-swing': {
      subject: 'One swing is all it takes to start',
      paragraphs: [
        'Stand the phone up, film one usual swing, and tap how your last ten balls came off: about three minutes.',
        'Your usual miss is more useful than your best. If filming is the trouble, answer this letter and we help.',
      ],
      does: 'Send your first swing',
      path: '/send',
    },
    practice: {
      subject: 'Ten balls this week?',
      paragraphs: [
        `A few minutes with ${drill} move you on more than a long session later.`,
        'Log it in three taps, even if it did not go well: that is what your coach can use.',
      ],
      does: 'Log your practice',
      path: '/home',
    },
  };
  return words[data.kind];
};

/** A reminder to a student: one thing, one page, and the way to end all reminders. */
export const nudgeLetter = (data: NudgeData): Composed => {
  const { subject, paragraphs, does, path } = wordsOf(data);
  return compose({
    subject,
    name: data.name,
    academyName: data.academyName,
    paragraphs,
    cautions: cautionsOf(data.drill?.id ?? null, data.hand),
    page: { does, url: `${data.publicUrl}${path}` },
    footer: { does: 'No more reminders', url: data.stopUrl },
  });
};
