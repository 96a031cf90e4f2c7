import { slowSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

const rail = tape('tape before your toes', { xMm: -115, yMm: -490 }, { lengthMm: 700 });

export const toeUpStops: Drill = {
  id: 'toe-up-stops',
  name: 'Toe-up stops',
  version: 1,
  purpose: 'Shows you the face and the club half-way back and half-way through.',
  causes: ['open-face', 'closed-face', 'held-off', 'over-rolled', 'inside-takeaway', 'strong-grip'],
  stations: stations({
    needs: ['tape', 'phone'],
    objects: [rail],
    steps: [
      'Stick tape before your toes, along the target line.',
      'Put the phone on a stand behind you, hand high, its lens on the line of the tape.',
    ],
    at: { grass: { lastRung: 'hip-high', steps: ['Lay the tape flat and press it into the grass.'] } },
  }),
  steps: [
    'Swing back until the shaft is level and stop: it lies above the tape, the toe points up.',
    'Swing through until it is level and stop: above the tape again, toe up again.',
    'Look at both stops, put right what you see, and only then swing without a stop.',
    'Film one of three.',
  ],
  feel: 'The leading edge of the club is parallel to a leaning fence at both stops.',
  ladder: ladder({
    rehearsal: 'Both stops: shaft over the tape, toe up, no more than a thumb’s width off.',
    brush: 'Both stops right, then a brush without a stop.',
    'hip-high': { clean: 'On film both stops are right and the ball started at the target.', filmed: true },
  }),
  overCorrection: 'You hold the club still and steer it: let it swing between the stops.',
  exaggerations: [
    { level: 'mild', how: 'One stop, on the way back.', setting: 'shaft level, toe up' },
    { level: 'firm', how: 'Both stops.', setting: 'shaft level, toe up, twice' },
  ],
  dose: 'Ten with stops and ten without, three days a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, slowSentence],
  notWith: ['wrist-pain'],
  source: 'common practice, no source',
};
