import { clear, phrasesOf, seen } from './of-cause.ts';

export const surroundingPhrases = [
  ...phrasesOf('club-fit', {
    shows: [
      seen(
        'toe-or-heel-in-the-air',
        'On your film one end of the sole stays off the ground at the ball: the club may not have the right length or lie for you.',
      ),
    ],
    why: [
      [
        ['toe', 'heel'],
        'A club that does not fit meets the ball away from the middle of its face, however well you swing it.',
      ],
    ],
    unseen: {
      'face-on':
        'A film from the front does not show how the sole meets the ground. Put a strip of tape on the face, hit ten balls and send me a photo of the marks.',
    },
    praise: [
      clear(
        'toe-or-heel-in-the-air',
        'The sole of your {club} lies flat at the ball: the club fits you there.',
      ),
    ],
  }),
  ...phrasesOf('tee-too-high', {
    shows: [
      seen(
        'ball-above-club',
        'Your ball sits so high on its tee that more than half of it shows above the club.',
      ),
    ],
    why: [
      [['sky'], 'With the ball that high the club slips under it, and the top edge sends it straight up.'],
    ],
    praise: [
      clear('ball-above-club', 'Your tee has the right height: half of the ball shows above the club.'),
    ],
  }),
  ...phrasesOf('mat-hides-fat', {
    shows: [
      seen(
        'mat-struck-first',
        'Your club bounces off the mat before it meets the ball; on grass it would dig.',
      ),
    ],
    why: [
      [
        ['thin'],
        'The club touches the mat first, skids and meets the ball with its lower edge. It feels like a thin one, but the ground came first.',
      ],
    ],
    praise: [
      clear('mat-struck-first', 'You meet the ball before the mat: that strike will hold on grass, too.'),
    ],
  }),
];
