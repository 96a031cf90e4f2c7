import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

const shaftDown = 'shaft-steeper-at-lead-arm-down';
const headDown = 'clubhead-outside-hands-at-shaft-parallel-down';
const headBack = 'clubhead-outside-hands-at-shaft-parallel-back';

export const pathPhrases = [
  ...phrasesOf('out-to-in', {
    shows: [
      measured(
        headDown,
        'above',
        `On the way down, with the club level, the clubhead is [[{doubted:${headDown}} ]]outside your hands.`,
      ),
      measured(
        shaftDown,
        'above',
        `On the way down the shaft is [[{doubted:${shaftDown}} ]]steeper than where it started.`,
      ),
      seen('clubhead-outside-hands-down', 'On the way down the clubhead is outside your hands.'),
    ],
    why: [
      [
        ['slice', 'pull'],
        'From the outside the club cuts across the ball to the {lead}: the ball starts there, and curves back if the face is open.',
      ],
      [['sky'], 'From the outside the club comes down steeply and its top edge meets the ball.'],
      [
        ['heel', 'toe'],
        'From the outside the club crosses the ball on a slant, and the middle of the face passes it by.',
      ],
    ],
    unseen: {
      'face-on':
        'From the front I cannot see from which side the club comes. Film one swing from behind; until then, lay a soft cover outside the ball and a little behind it, and swing without touching it.',
    },
    praise: [
      sound(
        shaftDown,
        `The club comes down on a good slope[[: {doubted:${shaftDown}} {way:${shaftDown}} than at the start]].`,
      ),
      clear('clubhead-outside-hands-down', 'The club does not come from the outside: keep that.'),
    ],
  }),
  ...phrasesOf('in-to-out', {
    shows: [
      measured(
        headDown,
        'below',
        `On the way down, with the club level, the clubhead is [[{doubted:${headDown}} ]]inside your hands: it comes from too far behind you.`,
      ),
      measured(
        shaftDown,
        'below',
        `On the way down the shaft is [[{doubted:${shaftDown}} ]]flatter than where it started.`,
      ),
      seen('clubhead-inside-hands-down', 'On the way down the clubhead is behind your hands.'),
    ],
    why: [
      [['fat'], 'From so far behind you the club comes down early and meets the ground before the ball.'],
      [
        ['hook', 'push'],
        'From so far behind you the club swings out to the {trail}: the ball starts there, and curves back if the face closes.',
      ],
      [
        ['shank', 'heel'],
        'From so far behind you the club swings out, and its neck or heel gets to the ball first.',
      ],
    ],
    unseen: {
      'face-on':
        'From the front I cannot see from which side the club comes. Film one swing from behind; until then, lay a soft cover inside the ball and behind it, and swing without touching it.',
    },
    praise: [
      sound(
        headDown,
        `The club comes down in front of you[[: the clubhead {doubted:${headDown}} {way:${headDown}}]].`,
      ),
      clear('clubhead-inside-hands-down', 'The club does not drop behind you on the way down: keep that.'),
    ],
  }),
  ...phrasesOf('inside-takeaway', {
    shows: [
      measured(
        headBack,
        'below',
        `On the way back, with the club level, the clubhead is [[{doubted:${headBack}} ]]inside your hands: it has rolled behind you.`,
      ),
      seen('clubhead-inside-hands-back', 'On the way back the clubhead rolls behind your hands.'),
    ],
    why: [
      [
        ['shank'],
        'A club that rolled behind you has to be brought round again, and on the way it swings out past the ball.',
      ],
    ],
    unseen: {
      'face-on':
        'From the front I cannot see how the club leaves the ball. Film one swing from behind; until then, stop when the club is level on the way back: it should cover your hands for someone who stands behind you.',
    },
    praise: [
      sound(
        headBack,
        `The club leaves the ball well[[: the clubhead {doubted:${headBack}} {way:${headBack}} with the club level]].`,
      ),
      clear('clubhead-inside-hands-back', 'The club leaves the ball well: it stays in front of your hands.'),
    ],
  }),
];
