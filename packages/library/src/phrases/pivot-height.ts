import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

export const pivotHeightPhrases = [
  ...phrasesOf('hips-toward-ball', {
    shows: [
      measured(
        'seat-toward-ball-address-impact',
        'above',
        'On the way down your seat moves [[{doubted:seat-toward-ball-address-impact} ]]towards the ball, and your arms run out of room.',
      ),
      measured(
        'loss-of-trunk-bend-address-impact',
        'above',
        'At the ball you stand [[{doubted:loss-of-trunk-bend-address-impact} ]]more upright than when you started.',
      ),
      measured(
        'hands-toward-ball-address-impact',
        'above',
        'At the ball your hands are [[{doubted:hands-toward-ball-address-impact} ]]farther out than when you started.',
      ),
      seen('seat-leaves-line', 'On the way down your seat leaves its line and moves towards the ball.'),
    ],
    why: [
      [
        ['shank', 'heel'],
        'Hips that come towards the ball push the club out with them, and its neck or its heel meets the ball.',
      ],
      [['thin', 'topped'], 'Hips that come towards the ball make you stand up, and the club rises with you.'],
      [
        ['push'],
        'Hips that come towards the ball leave the arms stuck behind them, and the ball starts to the {trail}.',
      ],
    ],
    unseen: {
      'face-on':
        'From the front I cannot see whether your hips come towards the ball. Film one swing from behind; until then, let your seat touch a chair before you swing and keep the touch until the ball is gone.',
    },
    praise: [
      sound(
        'seat-toward-ball-address-impact',
        'You keep your distance from the ball[[: your seat moves {doubted:seat-toward-ball-address-impact} {way:seat-toward-ball-address-impact}]].',
      ),
      clear('seat-leaves-line', 'Your seat stays where it starts: your arms have all the room they need.'),
    ],
  }),
  ...phrasesOf('dip', {
    shows: [
      measured(
        'neck-base-height-address-impact',
        'below',
        'At the ball your collar is [[{doubted:neck-base-height-address-impact} ]]lower than when you started, so the ground comes sooner.',
      ),
      measured(
        'head-height-address-impact',
        'below',
        'At the ball your head is [[{doubted:head-height-address-impact} ]]lower than when you started.',
      ),
    ],
    why: [
      [
        ['fat'],
        'The club hangs from you. Every bit that you sink it sinks, too, and it meets the ground too soon.',
      ],
    ],
    praise: [
      sound(
        'neck-base-height-address-impact',
        'You keep your height to the ball[[: your collar is {doubted:neck-base-height-address-impact} {way:neck-base-height-address-impact}]].',
      ),
    ],
  }),
  ...phrasesOf('lift', {
    shows: [
      measured(
        'neck-base-height-address-impact',
        'above',
        'At the ball your collar is [[{doubted:neck-base-height-address-impact} ]]higher than when you started, so the club passes too high.',
      ),
      measured(
        'head-height-address-impact',
        'above',
        'At the ball your head is [[{doubted:head-height-address-impact} ]]higher than when you started, so the club passes too high.',
      ),
      seen('legs-straighten', 'Both your legs straighten before you reach the ball.'),
    ],
    why: [
      [
        ['thin', 'topped'],
        'The club hangs from you. Every bit that you rise it rises, too, and it meets the ball too high.',
      ],
      [['toe'], 'As you rise the club is drawn in, and the far end of the face meets the ball.'],
    ],
    praise: [
      sound(
        'head-height-address-impact',
        'Your head keeps its height to the ball[[: {doubted:head-height-address-impact} {way:head-height-address-impact}]].',
      ),
      clear('legs-straighten', 'You keep the bend of your knees until the ball is gone.'),
    ],
  }),
];
