import { swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

const across = { rotationDeg: 90, lengthMm: 200 };
const grassLine = tape(
  'line across the ball',
  { xMm: 0, yMm: 0 },
  { ...across, lengthMm: 600, what: 'line' },
);
const matTapes = [
  tape('tape beyond the ball', { xMm: 0, yMm: 250 }, across),
  tape('tape on your side', { xMm: 0, yMm: -250 }, across),
];

export const strikeMap: Drill = {
  id: 'strike-map',
  name: 'Strike map',
  version: 1,
  purpose: 'Shows where the club meets the ground and where the ball meets the face.',
  causes: ['mat-hides-fat', 'club-fit'],
  stations: stations({
    needs: ['pen', 'tape'],
    objects: matTapes,
    steps: [
      'Cover the face with tape or colour it with a dry-wipe pen.',
      'Write down for every swing: where the mark in the ground begins, in fingers before or past the line, and where the ball met the face.',
    ],
    at: {
      grass: {
        needs: ['pen'],
        objects: [grassLine],
        steps: ['Draw a line across the target line with a tee.'],
      },
      mat: {
        steps: [
          'Stick two tapes in one line across the mat with a grip length and a ball (30 cm) between them, and wipe the gap with a damp towel.',
        ],
      },
      home: {
        steps: [
          'Stick two tapes in one line across the rug with a grip length and a ball (30 cm) between them.',
        ],
      },
    },
  }),
  steps: [
    'Five brushes over the line without a ball: note where each mark begins.',
    'Five balls: note the mark, or the sound on a mat, and the spot on the face.',
    'Draw the ten spots on paper.',
    'Show the drawing to your coach.',
  ],
  feel: 'You are a surveyor today, not a player.',
  ladder: ladder({
    rehearsal: { clean: 'The club passed lowest over the line or past it.', balls: 5 },
    brush: {
      clean: 'The mark begins on the line or no more than two and a half balls (10 cm) past it.',
      balls: 5,
    },
    'hip-high': { clean: 'Ball first, struck within a ball diameter of the middle of the face.', balls: 10 },
  }),
  overCorrection: 'None to expect: it measures, it changes nothing.',
  exaggerations: [{ level: 'mild', how: 'As it is.', setting: 'ten swings, all written down' }],
  dose: 'Ten swings, once a week.',
  minutes: 10,
  ballsAtMost: 20,
  cautions: [...swingCautions, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source',
};
