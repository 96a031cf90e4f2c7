import { clear, phrasesOf, seen } from './of-cause.ts';

const topFromFront =
  'From the front I cannot see how the face is turned at the top. Film one swing from behind; until then, stop at the top and let someone see whether the face looks as your {lead} forearm looks.';
const throughFromBehind =
  'From behind I cannot see how the face turns after the ball. Film one swing from the front; until then, stop when the club is level after the ball and see whether its toe points up.';

export const facePhrases = [
  ...phrasesOf('open-face', {
    shows: [
      seen('toe-hangs-at-top', 'At the top the toe of your club hangs straight down: the face is open.'),
    ],
    why: [
      [
        ['slice', 'push'],
        'A face that is open at the top is still open at the ball, and the ball goes to the {trail}.',
      ],
      [['shank'], 'An open face leads with its neck, and that is what meets the ball.'],
    ],
    unseen: { 'face-on': topFromFront },
    praise: [clear('toe-hangs-at-top', 'The face is not open at the top: a good place to come down from.')],
  }),
  ...phrasesOf('closed-face', {
    shows: [seen('face-looks-up-at-top', 'At the top the face of your club looks at the sky: it is closed.')],
    why: [
      [
        ['hook', 'pull'],
        'A face that is closed at the top is still closed at the ball: the ball starts to the {lead} or curves there.',
      ],
    ],
    unseen: { 'face-on': topFromFront },
    praise: [
      clear('face-looks-up-at-top', 'The face is not closed at the top: a good place to come down from.'),
    ],
  }),
  ...phrasesOf('held-off', {
    shows: [
      seen(
        'toe-not-up-after-impact',
        'With the club level after the ball its face still looks at the sky: you hold it from turning.',
      ),
    ],
    why: [
      [
        ['slice', 'push'],
        'A face that is held from turning is open at the ball, and the ball goes to the {trail}.',
      ],
    ],
    unseen: { 'down-the-line': throughFromBehind },
    praise: [clear('toe-not-up-after-impact', 'You let the face turn through the ball: keep that.')],
  }),
  ...phrasesOf('over-rolled', {
    shows: [
      seen(
        'toe-past-up-after-impact',
        'With the club level after the ball its face looks at the ground: your hands have rolled it shut.',
      ),
    ],
    why: [[['hook'], 'Hands that roll shut the face at the ball, and the ball curves to the {lead}.']],
    unseen: { 'down-the-line': throughFromBehind },
    praise: [clear('toe-past-up-after-impact', 'Your hands do not roll through the ball: keep them so.')],
  }),
];
