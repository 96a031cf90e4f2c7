import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

export const pivotBackPhrases = [
  ...phrasesOf('sway-away', {
    shows: [
      measured(
        'hip-shift-address-top',
        'below',
        'On the way back your hips drift [[{doubted:hip-shift-address-top} ]]away from the target, and the bottom of the swing goes with them.',
      ),
      measured(
        'head-shift-address-top',
        'below',
        'On the way back your head moves [[{doubted:head-shift-address-top} ]]away from the target.',
      ),
      seen('trail-hip-outside-foot', 'At the top your {trail} hip stands outside your {trail} foot.'),
    ],
    why: [
      [
        ['fat', 'thin'],
        'What moves away from the ball has to come back in time. If it does not, the club is at its lowest too early: the ground first, or the ball on the way up.',
      ],
      [['topped'], 'Coming back from so far away you rise to reach the ball, and the club passes over it.'],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see whether you drift. Film one swing from the front; until then, put a soft cushion beside your {trail} hip and turn without pushing it over.',
    },
    praise: [
      sound(
        'hip-shift-address-top',
        'You turn over your feet and do not drift[[: hips {doubted:hip-shift-address-top} {way:hip-shift-address-top}]].',
      ),
      clear('trail-hip-outside-foot', 'At the top your hips stay between your feet: a good turn.'),
    ],
  }),
  ...phrasesOf('reverse-tilt', {
    shows: [
      measured(
        'trunk-lean-at-top',
        'above',
        'At the top your upper body leans [[{doubted:trunk-lean-at-top} ]]towards the target.',
      ),
      measured(
        'head-shift-address-top',
        'above',
        'At the top your head is [[{doubted:head-shift-address-top} ]]nearer the target than when you started.',
      ),
    ],
    why: [
      [
        ['fat', 'topped'],
        'Whoever leans to the target at the top falls back on the way down, and the bottom of the swing falls back, too.',
      ],
      [
        ['slice'],
        'Whoever leans to the target at the top falls back on the way down, and the club cuts across the ball.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see which way you lean. Film one swing from the front; until then, turn in front of a mirror until your chest is over your {trail} knee.',
    },
    praise: [
      sound(
        'trunk-lean-at-top',
        'At the top your upper body leans as it should[[: {doubted:trunk-lean-at-top} {way:trunk-lean-at-top}]].',
      ),
    ],
  }),
  ...phrasesOf('under-turn', {
    shows: [seen('lead-shoulder-short-of-ball', 'At the top your {lead} shoulder stops short of the ball.')],
    why: [
      [
        ['slice'],
        'Arms that went back alone come down alone, over the outside, and the club cuts across the ball.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see how far you turn. Film one swing from the front; until then, lay a club across your shoulders and turn until its end is over the ball.',
    },
    praise: [
      clear(
        'lead-shoulder-short-of-ball',
        'You turn well: at the top your {lead} shoulder is over the ball.',
      ),
    ],
  }),
];
