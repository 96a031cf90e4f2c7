import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

export const pivotDownPhrases = [
  ...phrasesOf('hang-back', {
    shows: [
      measured(
        'hip-shift-top-lead-arm-down',
        'below',
        'From the top your hips hardly move forward before your arms come down[[: {doubted:hip-shift-top-lead-arm-down} {way:hip-shift-top-lead-arm-down}]]. Be on your {lead} foot by then.',
      ),
      measured(
        'hip-shift-address-impact',
        'below',
        'At the ball your hips have not come far enough forward[[: {doubted:hip-shift-address-impact} {way:hip-shift-address-impact}]].',
      ),
      measured(
        'hip-past-ball-at-finish',
        'below',
        'When the swing ends your hips are [[{doubted:hip-past-ball-at-finish} ]]short of the ball.',
      ),
      seen('trail-heel-down', 'At the ball your {trail} heel is still flat on the ground.'),
      seen('falls-back', 'At the end you fall back onto your {trail} foot.'),
    ],
    why: [
      [
        ['fat', 'thin'],
        'The bottom of the swing stays where you stay. On your {trail} foot that is behind the ball: the ground comes first, or the club meets the ball as it rises.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see when you move forward. Film one swing from the front; until then, hold your finish for three seconds and see whether you can lift your {trail} foot.',
    },
    praise: [
      sound(
        'hip-shift-top-lead-arm-down',
        'You move forward in time: hips {doubted:hip-shift-top-lead-arm-down} {way:hip-shift-top-lead-arm-down} before your arms come down.',
      ),
      sound(
        'hip-past-ball-at-finish',
        'You finish on your {lead} foot: hips {doubted:hip-past-ball-at-finish} past the ball.',
      ),
      clear('falls-back', 'You finish in balance on your {lead} foot: keep that.'),
    ],
  }),
  ...phrasesOf('upper-body-lunge', {
    shows: [
      measured(
        'head-shift-address-impact',
        'above',
        'At the ball your head is [[{doubted:head-shift-address-impact} ]]nearer the target than when you started. Let the hips go first and the head stay.',
      ),
      measured(
        'neck-base-shift-address-impact',
        'above',
        'At the ball your collar is [[{doubted:neck-base-shift-address-impact} ]]nearer the target than when you started.',
      ),
      seen('chest-leans-ahead', 'At the ball your chest is already past it.'),
    ],
    why: [
      [
        ['topped', 'thin', 'sky'],
        'Head and chest in front of the ball make the club come down steeply: it meets the top of the ball, or slips under it.',
      ],
      [
        ['pull'],
        'Head and chest in front of the ball push the club to the outside, and the ball starts to the {lead}.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see whether your head runs ahead. Film one swing from the front; until then, swing with your shadow in front of you and keep its head on one spot.',
    },
    praise: [
      sound(
        'head-shift-address-impact',
        'Your head stays behind the ball until it is gone[[: it moves {doubted:head-shift-address-impact} {way:head-shift-address-impact}]].',
      ),
      clear('chest-leans-ahead', 'Your chest stays behind the ball until it is gone.'),
    ],
  }),
  ...phrasesOf('slide-without-turn', {
    shows: [
      measured(
        'hip-shift-address-impact',
        'above',
        'At the ball your hips have run [[{doubted:hip-shift-address-impact} ]]towards the target: too far.',
      ),
      seen('hip-outside-lead-foot', 'At the ball your {lead} hip stands outside your {lead} foot.'),
      seen(
        'pockets-hidden-at-impact',
        'From behind one of your two back pockets is hidden at the ball: the hips slid and did not turn.',
      ),
    ],
    why: [
      [
        ['push', 'hook'],
        'Hips that slide leave the club behind. It comes from the inside: the ball starts to the {trail}, or the hands rescue it and it curves to the {lead}.',
      ],
    ],
    praise: [
      sound(
        'hip-shift-address-impact',
        'Your hips move forward as they should: {doubted:hip-shift-address-impact} {way:hip-shift-address-impact} at the ball.',
      ),
      clear('hip-outside-lead-foot', 'Your hips stay over your {lead} foot at the ball.'),
    ],
  }),
  ...phrasesOf('stalled-turn', {
    shows: [
      seen(
        'pockets-hidden-at-impact',
        'At the ball one of your two back pockets is hidden from behind: your body has stopped turning.',
      ),
    ],
    why: [[['hook'], 'When the body stops, the arms swing past it and roll the face shut.']],
    unseen: {
      'face-on':
        'From the front I cannot see how far your hips have turned. Film one swing from behind; until then, end each swing with your belt buckle at the target.',
    },
    praise: [clear('pockets-hidden-at-impact', 'You keep turning through the ball: both back pockets show.')],
  }),
];
