import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

export const handsAndHipsPhrases = [
  ...phrasesOf('handle-back', {
    shows: [
      measured(
        'handle-ahead-of-lead-thigh',
        'below',
        'At the start your hands are [[{doubted:handle-ahead-of-lead-thigh} ]]behind the inside of your {lead} thigh. Put them in front of it before anything moves.',
      ),
      measured(
        'handle-ahead-of-ball',
        'below',
        'Before you swing, your hands stand [[{doubted:handle-ahead-of-ball} ]]behind the ball.',
      ),
      measured(
        'handle-ahead-of-hip-middle',
        'below',
        'Before you swing, your hands hang too near the middle of your hips[[: {doubted:handle-ahead-of-hip-middle} {way:handle-ahead-of-hip-middle}]].',
      ),
      seen('handle-at-mid-body', 'The handle points at the middle of your body before you swing.'),
    ],
    why: [
      [
        ['fat', 'thin'],
        'Where the hands are at the start, the club wants to be at the ball. Hands that wait behind it let the clubhead down too soon: into the ground, or past it on its way up.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see where your hands stand. Take one photo from the front before you swing, the handle in front of the inside of your {lead} thigh.',
    },
    praise: [
      sound(
        'handle-ahead-of-ball',
        'Your hands stand well before you swing[[: {doubted:handle-ahead-of-ball} {way:handle-ahead-of-ball}]].',
      ),
      clear('handle-at-mid-body', 'Your hands start in front of your {lead} thigh: keep that.'),
    ],
  }),
  ...phrasesOf('hips-back-at-address', {
    shows: [
      measured(
        'hip-middle-along-ankles',
        'below',
        'Before you swing, your hips stand nearer your {trail} foot than the middle[[: {doubted:hip-middle-along-ankles} {way:hip-middle-along-ankles}]]. Set your belt half-way between your ankles.',
      ),
      measured(
        'hip-middle-behind-ball',
        'above',
        'Before you swing, your hips stand [[{doubted:hip-middle-behind-ball} ]]behind the ball: too far.',
      ),
    ],
    why: [
      [
        ['fat', 'thin'],
        'The lowest point of a swing lies near where your weight is. If you stand away from the target to begin with, the club finds the ground before the ball or comes up into it.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see how your hips stand over your feet. Take one photo from the front, your belt half-way between your ankles.',
    },
    praise: [
      sound(
        'hip-middle-along-ankles',
        'Your hips stand where they should before you swing[[: {doubted:hip-middle-along-ankles} {way:hip-middle-along-ankles}]].',
      ),
    ],
  }),
  ...phrasesOf('weak-grip', {
    shows: [
      seen(
        'lead-hand-on-lead-half',
        'The base of your {lead} thumb lies on the {lead} half of the handle: that hand sits too far under the club.',
      ),
    ],
    why: [
      [
        ['slice', 'push'],
        'Held like that the face stays open at the ball, and the ball goes to the {trail}.',
      ],
      [
        ['fat', 'thin'],
        'Held like that the face wants to stay open, so your hands wait for it, the clubhead overtakes them, and the ground or the lower edge comes first.',
      ],
    ],
    praise: [
      clear('lead-hand-on-lead-half', 'Your {lead} hand lies well over the handle: leave your grip alone.'),
    ],
  }),
  ...phrasesOf('strong-grip', {
    shows: [
      seen(
        'lead-hand-far-over',
        'Your {lead} hand lies so far over the handle that you see three of its knuckles or more.',
      ),
    ],
    why: [
      [
        ['hook'],
        'Held like that the face closes on its own before the ball, and the ball curves to the {lead}.',
      ],
    ],
    praise: [
      clear(
        'lead-hand-far-over',
        'Your {lead} hand does not lie too far over the handle: leave your grip alone.',
      ),
    ],
  }),
  ...phrasesOf('grip-tension', {
    shows: [seen('tight-hands', 'You hold on tightly. Hold the club at three to five of ten.')],
    why: [
      [['topped'], 'Tight hands pull the arms short as the club comes down, and it passes over the ball.'],
    ],
    unseen: {
      'face-on':
        'No film shows how tightly you hold the club. Hit five balls at three of ten, five at seven of ten, and tell me which five were cleaner.',
      'down-the-line':
        'No film shows how tightly you hold the club. Hit five balls at three of ten, five at seven of ten, and tell me which five were cleaner.',
    },
    praise: [clear('tight-hands', 'You hold the club lightly: keep that, above all when it matters.')],
  }),
];
