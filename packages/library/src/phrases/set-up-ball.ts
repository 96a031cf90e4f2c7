import { clear, measured, phrasesOf, seen, sound } from './of-cause.ts';

const roomFromFront =
  'From the front I cannot see how far you stand from the ball. Film one swing from behind; until then, check that your hands hang a hand’s width and a half from your thighs.';
const ballFromBehind =
  'From behind I cannot see where the ball lies between your feet. Take one photo from the front, or lay a tape from the ball to your feet and look.';

export const ballAndStancePhrases = [
  ...phrasesOf('ball-too-far-forward', {
    shows: [
      measured(
        'ball-inside-lead-heel',
        'below',
        'The ball lies too far forward[[: {doubted:ball-inside-lead-heel} {way:ball-inside-lead-heel}]].',
      ),
    ],
    why: [
      [
        ['fat', 'thin'],
        'The club is at its lowest behind a ball that lies so far forward: it meets the ground first, or the ball on its way up.',
      ],
      [
        ['pull'],
        'By the time the club reaches a ball that lies so far forward it already swings round to the {lead}.',
      ],
    ],
    unseen: { 'down-the-line': ballFromBehind },
    praise: [
      sound(
        'ball-inside-lead-heel',
        'The ball lies where it should[[: {doubted:ball-inside-lead-heel} {way:ball-inside-lead-heel}]].',
      ),
    ],
  }),
  ...phrasesOf('ball-too-far-back', {
    shows: [
      measured(
        'ball-inside-lead-heel',
        'above',
        'The ball lies too far back[[: {doubted:ball-inside-lead-heel} {way:ball-inside-lead-heel}]].',
      ),
      measured(
        'shaft-lean-at-address',
        'above',
        'Before you swing, the shaft leans [[{doubted:shaft-lean-at-address} ]]towards the target: the ball lies too far back.',
      ),
    ],
    why: [
      [['push'], 'The club reaches a ball that lies so far back while it still swings out to the {trail}.'],
      [['sky'], 'The club still comes down steeply where that ball lies, so its top edge meets it.'],
    ],
    unseen: { 'down-the-line': ballFromBehind },
    praise: [
      sound(
        'shaft-lean-at-address',
        'The shaft stands well before you swing[[: {doubted:shaft-lean-at-address} {way:shaft-lean-at-address}]].',
      ),
    ],
  }),
  ...phrasesOf('stance-width', {
    shows: [
      measured(
        'stance-width',
        'above',
        'Your heels stand [[{doubted:stance-width} apart: that is ]]too wide for this club.',
      ),
      measured(
        'stance-width',
        'below',
        'Your heels stand [[{doubted:stance-width} apart: that is ]]too narrow for this club.',
      ),
      seen('stance-off-width', 'Your feet are clearly wider or narrower than your shoulders.'),
    ],
    why: [
      [
        ['fat'],
        'From feet that are too wide you cannot move forward in time, and on feet that are too narrow you move too much: either way the ground comes first.',
      ],
    ],
    unseen: {
      'down-the-line':
        'From behind I cannot see how wide you stand. Take one photo from the front, heels about as wide as your shoulders.',
    },
    praise: [
      sound('stance-width', 'Your stance has a good width: heels {doubted:stance-width} apart.'),
      clear('stance-off-width', 'Your stance has a good width: leave it as it is.'),
    ],
  }),
  ...phrasesOf('too-close-upright', {
    shows: [
      measured(
        'hands-to-thighs-at-address',
        'below',
        'Your hands hang too close to you before you swing[[: {doubted:hands-to-thighs-at-address} {way:hands-to-thighs-at-address}]].',
      ),
      measured(
        'ball-ahead-of-toe-line',
        'below',
        'You stand too close to the ball[[: it lies {doubted:ball-ahead-of-toe-line} {way:ball-ahead-of-toe-line}]].',
      ),
      measured(
        'trunk-bend-at-address',
        'below',
        'You stand too upright before you swing[[: bent {doubted:trunk-bend-at-address} {way:trunk-bend-at-address}]].',
      ),
      seen('cramped-at-address', 'Your hands hang closer to your thighs than a hand’s width.'),
    ],
    why: [
      [
        ['shank', 'heel'],
        'Where the arms have no room they swing out, and the ball meets the part of the club nearest to you.',
      ],
    ],
    unseen: { 'face-on': roomFromFront },
    praise: [
      sound(
        'hands-to-thighs-at-address',
        'Your arms have room before you swing[[: hands {doubted:hands-to-thighs-at-address} {way:hands-to-thighs-at-address}]].',
      ),
      clear('cramped-at-address', 'Your arms hang with room to swing: keep that distance.'),
    ],
  }),
  ...phrasesOf('too-far-bent-over', {
    shows: [
      measured(
        'hands-to-thighs-at-address',
        'above',
        'You reach for the ball before you swing[[: your hands are {doubted:hands-to-thighs-at-address} {way:hands-to-thighs-at-address}]].',
      ),
      measured(
        'ball-ahead-of-toe-line',
        'above',
        'You stand too far from the ball[[: it lies {doubted:ball-ahead-of-toe-line} {way:ball-ahead-of-toe-line}]].',
      ),
      measured(
        'trunk-bend-at-address',
        'above',
        'You bow too far before you swing[[: {doubted:trunk-bend-at-address} {way:trunk-bend-at-address}]].',
      ),
      seen('reaches-at-address', 'Your arms reach out for the ball instead of hanging.'),
    ],
    why: [
      [
        ['toe'],
        'From that far away you draw back as you swing, and the ball meets the part of the face farthest from you.',
      ],
    ],
    unseen: { 'face-on': roomFromFront },
    praise: [
      sound(
        'trunk-bend-at-address',
        'You bow well from the hips[[: {doubted:trunk-bend-at-address} {way:trunk-bend-at-address}]].',
      ),
      clear('reaches-at-address', 'Your arms hang and do not reach: keep that distance.'),
    ],
  }),
  ...phrasesOf('weight-on-toes', {
    shows: [
      seen('weight-over-toes', 'Before you swing, your weight lies on your toes.'),
      seen('tips-over-toes', 'During the swing you tip forward over your toes.'),
    ],
    why: [
      [['shank'], 'Weight on the toes takes you towards the ball, and its neck gets there before the face.'],
    ],
    unseen: {
      'face-on':
        'From the front I cannot see where on your feet you stand. Film one swing from behind; until then, see whether you can lift your toes in your shoes before you swing.',
    },
    praise: [clear('weight-over-toes', 'You stand on the middle of your feet: keep that.')],
  }),
  ...phrasesOf('alignment', {
    shows: [
      measured(
        'toe-line-to-target-stick',
        'above',
        'Before you swing, the tips of your shoes point [[{doubted:toe-line-to-target-stick} ]]to the {lead} of the line to the target.',
      ),
      measured(
        'toe-line-to-target-stick',
        'below',
        'Before you swing, the tips of your shoes point [[{doubted:toe-line-to-target-stick} ]]to the {trail} of the line to the target.',
      ),
      seen(
        'feet-or-shoulders-off-line',
        'Your feet or your shoulders point clearly beside the target before you swing.',
      ),
    ],
    why: [
      [
        ['slice', 'push', 'pull'],
        'A swing that is aimed beside the target has to be turned back to it on the way, and the ball starts or curves to one side.',
      ],
    ],
    unseen: {
      'face-on':
        'From the front I cannot see where you aim. Lay a stick along your toes, step behind it and look where it points; or film one swing from behind.',
    },
    praise: [
      sound(
        'toe-line-to-target-stick',
        'The tips of your shoes run along the line to the target[[: {doubted:toe-line-to-target-stick} {way:toe-line-to-target-stick}]].',
      ),

      clear(
        'feet-or-shoulders-off-line',
        'You aim well: feet and shoulders run along the line to the target.',
      ),
    ],
  }),
];
