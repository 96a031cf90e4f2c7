import { causeIn } from './cause-in.ts';
import { observed } from './sign.ts';
import { filmBehind, filmFaceOn } from './unseen.ts';

const cause = causeIn('face', 0.8);
const onlyBehind = { 'face-on': filmBehind };
const onlyFaceOn = { 'down-the-line': filmFaceOn };

/** How the face is turned on the way to the ball. No view measures it in degrees: it is seen and tapped. */
export const faceCauses = [
  cause({
    id: 'open-face',
    name: 'Face open at the top',
    brings: { slice: 3, push: 1, shank: 1, 'face-scatter': 2 },
    signs: [observed('toe-hangs-at-top', 'down-the-line', 0.75, 0.85)],
    unseen: onlyBehind,
    leadsTo: { 'out-to-in': 0.2, flip: 0.2 },
    forStudent:
      'The face is open at the top, so the ball curves away: let the face look as your {lead} forearm looks.',
    drills: ['flat-wrist-set', 'toe-up-stops', 'split-hands'],
  }),
  cause({
    id: 'closed-face',
    name: 'Face closed at the top',
    brings: { hook: 3, pull: 2, 'face-scatter': 2 },
    signs: [observed('face-looks-up-at-top', 'down-the-line', 0.75, 0.85)],
    unseen: onlyBehind,
    leadsTo: { 'in-to-out': 0.2, 'stalled-turn': 0.2 },
    forStudent:
      'The face is closed at the top and only gets more so: let the face look as your {lead} forearm looks.',
    drills: ['grip-ladder', 'toe-up-stops'],
  }),
  cause({
    id: 'held-off',
    name: 'Face held off through the ball',
    brings: { slice: 2, push: 2, 'face-scatter': 2 },
    signs: [observed('toe-not-up-after-impact', 'face-on', 0.7, 0.8)],
    unseen: onlyFaceOn,
    leadsTo: {},
    forStudent:
      'You hold the face from turning: let the toe of the club point up again when the shaft is level after the ball.',
    drills: ['split-hands', 'toe-up-stops'],
  }),
  cause({
    id: 'over-rolled',
    name: 'Face rolled over through the ball',
    brings: { hook: 3, 'face-scatter': 2 },
    signs: [observed('toe-past-up-after-impact', 'face-on', 0.7, 0.8)],
    unseen: onlyFaceOn,
    leadsTo: {},
    forStudent:
      'Your hands roll the face shut: let the toe of the club point up, and no further, when the shaft is level after the ball.',
    drills: ['toe-up-stops', 'low-punch'],
  }),
] as const;
