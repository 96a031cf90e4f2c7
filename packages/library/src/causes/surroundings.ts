import { causeIn } from './cause-in.ts';
import { observed } from './sign.ts';

const equipment = causeIn('equipment', 1);
const environment = causeIn('environment', 1);

/** What is not the player's swing: club, tee, ground. */
export const surroundingCauses = [
  equipment({
    id: 'club-fit',
    name: 'Club does not fit',
    brings: { toe: 1, heel: 1 },
    signs: [observed('toe-or-heel-in-the-air', 'down-the-line', 0.55, 0.8)],
    unseen: { 'face-on': 'Not to be seen face-on: look at the strike map and the sole of the club.' },
    leadsTo: { 'too-close-upright': 0.2, 'too-far-bent-over': 0.2 },
    forStudent:
      'Your club may be too long, too short or too upright for you: first we look where on the face you strike.',
    drills: ['strike-map'],
    check:
      'Have the length and the lie of this club checked by a fitter before you change your swing for it.',
  }),
  equipment({
    id: 'tee-too-high',
    name: 'Ball teed too high',
    brings: { sky: 3 },
    signs: [observed('ball-above-club', 'either', 0.75, 0.85)],
    leadsTo: {},
    forStudent:
      'The ball sits so high that the club passes under it: with the club on the ground, half of the ball shows above it, no more.',
    drills: ['tee-ladder', 'face-strike-spots'],
  }),
  environment({
    id: 'mat-hides-fat',
    name: 'The mat hides that the ground comes first',
    brings: { thin: 1 },
    signs: [observed('mat-struck-first', 'either', 0.6, 0.8)],
    leadsTo: {},
    forStudent:
      'On a mat the club skids on and you do not notice that it met the ground first: make the ground show you.',
    drills: ['strike-map', 'flat-towel'],
  }),
] as const;
