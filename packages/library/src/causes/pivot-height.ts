import { causeIn } from './cause-in.ts';
import { above, aboveBehind, aboveEither, below, belowEither, observed } from './sign.ts';
import { filmBehind } from './unseen.ts';

const cause = causeIn('pivot', 0.8);

/** How the body keeps, or does not keep, its height and its distance from the ball. */
export const pivotHeightCauses = [
  cause({
    id: 'hips-toward-ball',
    name: 'Hips move towards the ball',
    brings: { shank: 3, heel: 3, thin: 2, topped: 1, push: 1 },
    signs: [
      aboveBehind('seat-toward-ball-address-impact', { sd: 20, sens: 0.8, spec: 0.9, shares: 'seat' }),
      aboveBehind('hands-toward-ball-address-impact', {
        sd: 25,
        sens: 0.8,
        spec: 0.9,
        shares: 'hands-at-impact',
      }),
      aboveBehind('hands-height-address-impact', {
        sd: 30,
        sens: 0.55,
        spec: 0.85,
        shares: 'hands-at-impact',
      }),
      aboveBehind('loss-of-trunk-bend-address-impact', { sd: 4, sens: 0.7, spec: 0.85, shares: 'seat' }),
      observed('seat-leaves-line', 'down-the-line', 0.75, 0.8, 'seat'),
    ],
    unseen: { 'face-on': filmBehind },
    leadsTo: { flip: 0.3, 'over-rolled': 0.2 },
    forStudent:
      'Your hips come towards the ball on the way down and your arms run out of room: keep your seat where it starts.',
    drills: ['seat-touch', 'soft-block-beyond-ball', 'pump'],
  }),
  cause({
    id: 'dip',
    name: 'Dip: the body drops into the ball',
    brings: { fat: 2 },
    signs: [
      below('neck-base-height-address-impact', {
        sd: 15,
        sens: 0.75,
        spec: 0.88,
        shares: 'height-at-impact',
      }),
      belowEither('head-height-address-impact', {
        sd: 20,
        sens: 0.7,
        spec: 0.88,
        shares: 'height-at-impact',
      }),
      below('hip-height-address-impact', {
        edge: -40,
        sd: 20,
        sens: 0.6,
        spec: 0.85,
        shares: 'height-at-impact',
      }),
    ],
    leadsTo: { 'lead-arm-bend': 0.3, lift: 0.2 },
    forStudent:
      'You sink as you hit, so the club reaches the ground too soon: keep your collar at the height it starts at.',
    drills: ['head-mark', 'line-brush', 'posture-plumb', 'flat-towel'],
  }),
  cause({
    id: 'lift',
    name: 'Lift: the body rises through the ball',
    brings: { thin: 3, topped: 3, toe: 2 },
    signs: [
      aboveEither('head-height-address-impact', {
        sd: 20,
        sens: 0.75,
        spec: 0.88,
        shares: 'height-at-impact',
      }),
      above('neck-base-height-address-impact', {
        sd: 15,
        sens: 0.75,
        spec: 0.88,
        shares: 'height-at-impact',
      }),
      above('hip-height-address-impact', {
        edge: 30,
        sd: 20,
        sens: 0.5,
        spec: 0.85,
        shares: 'height-at-impact',
      }),
      aboveBehind('hands-height-address-impact', {
        sd: 30,
        sens: 0.5,
        spec: 0.85,
        shares: 'hands-at-impact',
      }),
      observed('legs-straighten', 'either', 0.6, 0.75, 'height-at-impact'),
    ],
    leadsTo: { 'lead-arm-bend': 0.3 },
    forStudent:
      'You rise just before the ball and the club rises with you: brush the grass and let it go up afterwards.',
    drills: ['head-mark', 'seat-touch', 'line-brush'],
  }),
] as const;
