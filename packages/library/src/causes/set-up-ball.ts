import { causeIn } from './cause-in.ts';
import { above, aboveBehind, below, belowBehind, observed, outside, outsideBehind } from './sign.ts';
import { filmBehind, filmFaceOn } from './unseen.ts';

const cause = causeIn('set-up', 1);
const onlyFaceOn = { 'down-the-line': filmFaceOn };
const onlyBehind = { 'face-on': filmBehind };
// Hips too far back show the same: they support.
const bodyToBall = { sd: 30, sens: 0.6, spec: 0.85, shares: 'ball-at-address', ratioAtMost: 2 } as const;

/** Where the ball, the feet and the aim are before the club moves. */
export const ballAndStanceCauses = [
  cause({
    id: 'ball-too-far-forward',
    name: 'Ball too far forward',
    tick: 'ball',
    brings: { fat: 2, thin: 1, pull: 1 },
    signs: [
      below('ball-inside-lead-heel', { sd: 25, sens: 0.8, spec: 0.88, shares: 'ball-at-address' }),
      below('shaft-lean-at-address', {
        sd: 2.5,
        sens: 0.7,
        spec: 0.92,
        shares: 'ball-at-address',
        ratioAtMost: 4,
      }),
      below('handle-ahead-of-ball', { sd: 25, sens: 0.65, spec: 0.9, shares: 'ball-at-address' }),
      above('hip-middle-behind-ball', bodyToBall),
      above('neck-base-behind-ball', bodyToBall),
      above('head-behind-ball', bodyToBall),
    ],
    unseen: onlyFaceOn,
    leadsTo: { 'upper-body-lunge': 0.3, 'out-to-in': 0.2 },
    forStudent:
      'The ball lies so far forward that the club is already on its way up: with a mid-iron play it under your {lead} ear.',
    drills: ['ball-position-tape', 'set-up-photo', 'forward-tee', 'line-brush'],
  }),
  cause({
    id: 'ball-too-far-back',
    name: 'Ball too far back',
    tick: 'ball',
    brings: { push: 2, sky: 2 },
    signs: [
      above('ball-inside-lead-heel', { sd: 25, sens: 0.8, spec: 0.85, shares: 'ball-at-address' }),
      above('shaft-lean-at-address', { sd: 3, sens: 0.75, spec: 0.88, shares: 'ball-at-address' }),
      above('handle-ahead-of-ball', { sd: 30, sens: 0.7, spec: 0.88, shares: 'ball-at-address' }),
      below('neck-base-behind-ball', { sd: 30, sens: 0.5, spec: 0.8, shares: 'ball-at-address' }),
    ],
    unseen: onlyFaceOn,
    leadsTo: { 'over-rolled': 0.2 },
    forStudent:
      'The ball lies so far back that the club meets it before the swing has come round: with a mid-iron play it under your {lead} ear.',
    drills: ['ball-position-tape', 'two-rails'],
  }),
  cause({
    id: 'stance-width',
    name: 'Stance too wide or too narrow',
    brings: { fat: 1 },
    signs: [
      outside('stance-width', { sd: 50, sens: 0.7, spec: 0.85, shares: 'feet' }),
      observed('stance-off-width', 'face-on', 0.7, 0.8, 'feet'),
    ],
    unseen: onlyFaceOn,
    leadsTo: { 'hang-back': 0.2, 'sway-away': 0.2 },
    forStudent:
      'Your feet make it hard to move forward: with a mid-iron stand about as wide as your shoulders.',
    drills: ['ball-position-tape', 'feet-together', 'set-up-photo'],
  }),
  cause({
    id: 'too-close-upright',
    name: 'Stands too close or too upright',
    brings: { shank: 2, heel: 2 },
    signs: [
      belowBehind('ball-ahead-of-toe-line', { sd: 45, sens: 0.7, spec: 0.85, shares: 'room-at-address' }),
      belowBehind('hands-ahead-of-toe-line', { sd: 35, sens: 0.7, spec: 0.85, shares: 'room-at-address' }),
      belowBehind('hands-to-thighs-at-address', {
        sd: 30,
        sens: 0.75,
        spec: 0.85,
        shares: 'room-at-address',
      }),
      belowBehind('trunk-bend-at-address', { sd: 5, sens: 0.65, spec: 0.85, shares: 'bend-at-address' }),
      observed('cramped-at-address', 'down-the-line', 0.65, 0.85, 'room-at-address'),
    ],
    unseen: onlyBehind,
    leadsTo: { 'hips-toward-ball': 0.3, 'out-to-in': 0.2 },
    forStudent:
      'You stand so close to the ball that your arms have no room: bow from the hips until your hands hang a hand’s width and a half from your thighs.',
    drills: ['posture-plumb', 'soft-block-beyond-ball'],
  }),
  cause({
    id: 'too-far-bent-over',
    name: 'Stands too far away or bent over',
    brings: { toe: 2 },
    signs: [
      aboveBehind('ball-ahead-of-toe-line', { sd: 45, sens: 0.7, spec: 0.85, shares: 'room-at-address' }),
      aboveBehind('hands-ahead-of-toe-line', { sd: 35, sens: 0.7, spec: 0.85, shares: 'room-at-address' }),
      aboveBehind('hands-to-thighs-at-address', { sd: 30, sens: 0.7, spec: 0.85, shares: 'room-at-address' }),
      aboveBehind('trunk-bend-at-address', { sd: 5, sens: 0.65, spec: 0.85, shares: 'bend-at-address' }),
      observed('reaches-at-address', 'down-the-line', 0.65, 0.85, 'room-at-address'),
    ],
    unseen: onlyBehind,
    leadsTo: { dip: 0.2, 'hips-toward-ball': 0.3 },
    forStudent:
      'You reach for the ball and tip towards it: come closer until your hands hang below your chin and your weight rests on the middle of your feet.',
    drills: ['posture-plumb', 'face-strike-spots'],
  }),
  cause({
    id: 'weight-on-toes',
    name: 'Weight on the toes',
    brings: { shank: 2 },
    signs: [
      observed('weight-over-toes', 'down-the-line', 0.65, 0.85),
      observed('tips-over-toes', 'down-the-line', 0.55, 0.85),
    ],
    unseen: onlyBehind,
    leadsTo: { 'hips-toward-ball': 0.3 },
    forStudent:
      'Your weight is on your toes and takes you towards the ball: feel the laces of your shoes, not their tips.',
    drills: ['soft-block-beyond-ball', 'posture-plumb'],
  }),
  cause({
    id: 'alignment',
    name: 'Aims to one side',
    brings: { slice: 2, push: 2, pull: 2 },
    signs: [
      outsideBehind('toe-line-to-target-stick', { sd: 3, sens: 0.7, spec: 0.85, shares: 'aim' }),
      observed('feet-or-shoulders-off-line', 'down-the-line', 0.7, 0.85, 'aim'),
    ],
    unseen: onlyBehind,
    leadsTo: { 'out-to-in': 0.2, 'in-to-out': 0.2 },
    forStudent:
      'Your feet and shoulders point beside the target and the swing has to find its way back: set them along a line that you can see.',
    drills: ['two-rails', 'cover-outside'],
  }),
] as const;
