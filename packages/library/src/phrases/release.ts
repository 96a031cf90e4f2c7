import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

export const releasePhrases = [
  ...phrasesOf('thrown-early', {
    shows: [
      measured(
        'grip-end-to-ball-line-at-shaft-parallel-down',
        'below',
        'On the way down, with the club level, your hands are still [[{doubted:grip-end-to-ball-line-at-shaft-parallel-down} ]]short of the ball: the clubhead has been thrown ahead of its time.',
      ),
      seen(
        'clubhead-in-line-early',
        'Your clubhead has caught up with your {lead} arm before your hands pass your {trail} thigh.',
      ),
    ],
    why: [
      [
        ['fat', 'thin'],
        'A clubhead that is thrown early reaches its lowest point early: behind the ball. It meets the ground first, or comes up into the ball.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see when the clubhead is let go. Film one swing from the front; until then, swing the club upside down and hear where it is loudest: it should be past the ball.',
    },
    praise: [
      sound(
        'grip-end-to-ball-line-at-shaft-parallel-down',
        'You bring your hands down before the club[[: {doubted:grip-end-to-ball-line-at-shaft-parallel-down} {way:grip-end-to-ball-line-at-shaft-parallel-down}, with the club level]].',
      ),
      clear(
        'clubhead-in-line-early',
        'You keep the clubhead behind your hands until late: a strength of yours.',
      ),
    ],
  }),
  ...phrasesOf('flip', {
    shows: [
      measured(
        'handle-ahead-of-ball-at-impact',
        'below',
        'At the ball your hands have not gone before the club[[: they are {doubted:handle-ahead-of-ball-at-impact} {way:handle-ahead-of-ball-at-impact}]].',
      ),
      measured(
        'shaft-lean-at-impact',
        'below',
        'At the ball the shaft does not lean forward enough[[: {doubted:shaft-lean-at-impact} {way:shaft-lean-at-impact}]].',
      ),
      seen(
        'lead-wrist-cupped',
        'At the ball your {lead} wrist is bent back: the clubhead has passed your hands.',
      ),
    ],
    why: [
      [
        ['fat', 'thin'],
        'A clubhead that passes your hands is on its way up when it reaches the ball: it has met the ground before, or meets the ball with its lower edge.',
      ],
      [
        ['hook', 'slice'],
        'A clubhead that passes your hands turns its face as it goes, and the ball curves to whichever side that was.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see whether your hands arrive before the club. Film one swing from the front; until then, lay a flat strip of paper just past the ball’s spot and brush it away, without a ball.',
    },
    praise: [
      sound(
        'handle-ahead-of-ball-at-impact',
        'Your hands arrive before the club: {doubted:handle-ahead-of-ball-at-impact} {way:handle-ahead-of-ball-at-impact}.',
      ),
      clear('lead-wrist-cupped', 'Your {lead} wrist is flat at the ball: keep that.'),
    ],
  }),
  ...phrasesOf('lead-arm-bend', {
    shows: [
      measured(
        'lead-elbow-after-impact',
        'above',
        'Just after the ball your {lead} elbow is bent[[ by {doubted:lead-elbow-after-impact}]].',
      ),
      seen('lead-elbow-bends', 'Your {lead} elbow folds as soon as you reach the ball.'),
    ],
    why: [
      [['thin', 'topped'], 'An arm that folds gets shorter and lifts the club: it meets the ball too high.'],
      [['toe'], 'An arm that folds draws the club in, and the far end of the face meets the ball.'],
      [['slice'], 'An arm that folds drags the face along open, and the ball curves to the {trail}.'],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see your {lead} elbow after the ball. Film one swing from the front; until then, make short swings that end with that arm long and the club low.',
    },
    praise: [
      sound(
        'lead-elbow-after-impact',
        'Your {lead} arm stays long through the ball[[: bent by {doubted:lead-elbow-after-impact}]].',
      ),
      clear('lead-elbow-bends', 'Your {lead} arm stays long through the ball.'),
    ],
  }),
  ...phrasesOf('over-long', {
    shows: [seen('shaft-past-parallel', 'At the top your club goes past level with the ground.')],
    why: [
      [
        ['fat'],
        'The longer the way back, the harder it is to be in time: the club arrives early and meets the ground first.',
      ],
    ],
    praise: [
      clear('shaft-past-parallel', 'Your swing stops in good time at the top: its length is right for you.'),
    ],
  }),
  ...phrasesOf('rushed', {
    shows: [
      measured(
        'tempo-ratio',
        'below',
        'You start down in a hurry[[: your way back and your way down stand at {doubted:tempo-ratio}]].',
      ),
      measured(
        'tempo-ratio',
        'above',
        'You go back slowly and then have to hurry[[: your way back and your way down stand at {doubted:tempo-ratio}]].',
      ),
      seen('no-pause-at-top', 'Your way down begins before your way back has ended.'),
    ],
    why: [
      [['fat'], 'In a hurry the arms start before the body, and the club comes down behind the ball.'],
      [['slice'], 'In a hurry the shoulders start first and throw the club to the outside.'],
    ],
    praise: [
      sound(
        'tempo-ratio',
        'Your rhythm is good: your way back and your way down stand at {doubted:tempo-ratio}.',
      ),
      clear('no-pause-at-top', 'You finish going back before you come down: keep that rhythm.'),
    ],
  }),
  ...phrasesOf('radius-change', {
    shows: [
      seen(
        'arms-reach-at-top',
        'Your arms reach or fold on the way, so their length changes from swing to swing.',
      ),
    ],
    why: [
      [
        ['fat', 'thin'],
        'Longer arms reach the ground, shorter ones miss it: fat and thin from the same swing.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see whether your arms keep their length. Film one swing from the front; until then, brush the grass ten times without a ball and see whether the marks are alike.',
    },
    praise: [clear('arms-reach-at-top', 'Your arms keep their length all the way: a sound, wide swing.')],
  }),
];
