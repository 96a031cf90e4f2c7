import { slowSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { bag } from './objects.ts';
import { stations } from './stations.ts';

/** Its near side two fingers behind the seat; the club passes above and in front of the player. */
const behindSeat = bag('bag or padded chair', { xMm: -110, yMm: -1060 }, { lengthMm: 450, heightMm: 800 });

export const seatTouch: Drill = {
  id: 'seat-touch',
  name: 'Seat touch',
  version: 1,
  purpose: 'Keeps your seat where it starts, so that your arms have room.',
  causes: ['hips-toward-ball', 'lift', 'slide-without-turn'],
  stations: stations({
    needs: ['bag'],
    objects: [behindSeat],
    steps: [
      'Stand a bag or a padded chair two fingers (2 to 3 cm) behind your seat.',
      'Half speed at most, from hip height to hip height.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Set up so that your seat nearly touches the bag.',
    'Swing back: the {trail} back pocket touches it.',
    'Swing down: the {lead} back pocket takes its place.',
    'Both touches are light; you lean on nothing.',
  ],
  feel: 'One back pocket passes the bag on to the other.',
  ladder: ladder({
    rehearsal: '{trail} pocket, then {lead} pocket: touch kept until the club has passed the ball spot.',
    brush: 'The ground brushed, the touch kept until then.',
    'hip-high': 'Ball struck off the middle, the touch kept until it has gone.',
  }),
  overCorrection:
    'You sit down and hit the ground first: the touch is light and your collar keeps its height.',
  exaggerations: [
    { level: 'mild', how: 'A touch at the start of the way down.', setting: 'touch kept to hip height' },
    { level: 'firm', how: 'A touch until the ball has gone.', setting: 'touch kept past the ball' },
    {
      level: 'strong',
      how: 'A touch until the finish, without a ball.',
      setting: 'touch kept to the end, slow swings only',
      notFor: ['senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, slowSentence],
  notWith: ['hip-pain', 'low-back-pain'],
  source: 'common practice, no source',
};
