import { everyDrill } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const posturePlumb: Drill = {
  id: 'posture-plumb',
  name: 'Posture plumb',
  version: 1,
  purpose: 'Sets you at the distance at which the arms hang. No ball is struck until then.',
  causes: ['too-close-upright', 'too-far-bent-over', 'weight-on-toes', 'dip'],
  stations: stations({
    needs: ['mirror'],
    steps: [
      'Put the phone on a stand behind you, hand high, its lens on the line of your hands.',
      'Stand tall, bow from the hips, let the arms hang, sole the club: only then walk to the ball.',
    ],
    at: { grass: { lastRung: 'brush' }, mat: { lastRung: 'brush' } },
  }),
  steps: [
    'Set up in your usual time.',
    'Take the picture, or look over your shoulder into the mirror.',
    'Check: the grip end hangs below your chin, a hand’s width and a half before your thighs.',
    'Check: a line straight down from your {trail} shoulder meets the knee-cap and the middle of the shoe.',
  ],
  feel: 'A plumb line would hang from your collar to the laces of your shoes.',
  ladder: ladder({
    rehearsal: {
      clean: 'Grip end, shoulder line and weight all right on the picture.',
      balls: 5,
      allOf: 5,
      speedPercent: 0,
    },
    brush: { clean: 'All right on the picture, then a slow brush and a quiet finish.', balls: 5, allOf: 5 },
  }),
  overCorrection: 'You stand stiff as a soldier: shake out your arms before each one.',
  exaggerations: [{ level: 'mild', how: 'As it is.', setting: 'grip end below the chin' }],
  dose: 'Five set-ups, twice a day, five days a week.',
  minutes: 10,
  ballsAtMost: 20,
  cautions: [...everyDrill],
  notWith: [],
  source: 'common practice, no source',
};
