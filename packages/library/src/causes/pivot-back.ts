import { causeIn } from './cause-in.ts';
import { above, below, observed } from './sign.ts';
import { filmFaceOn } from './unseen.ts';

const cause = causeIn('pivot', 0.8);
const unseen = { 'down-the-line': filmFaceOn };

/** How the body moves over its feet, from address to the top. */
export const pivotBackCauses = [
  cause({
    id: 'sway-away',
    name: 'Sway away from the target',
    brings: { fat: 3, thin: 2, topped: 2, 'low-point-scatter': 3 },
    signs: [
      below('hip-shift-address-top', { edge: -40, sd: 20, sens: 0.8, spec: 0.9, shares: 'shift-to-top' }),
      below('hip-shift-address-top-percent', {
        edge: -10,
        sd: 5,
        sens: 0.8,
        spec: 0.9,
        shares: 'shift-to-top',
      }),
      below('head-shift-address-top', {
        edge: -65,
        sd: 30,
        sens: 0.6,
        spec: 0.85,
        shares: 'shift-to-top',
        ratioAtMost: 3,
      }),
      observed('trail-hip-outside-foot', 'face-on', 0.65, 0.85, 'shift-to-top'),
    ],
    unseen,
    leadsTo: { 'hang-back': 0.5, 'thrown-early': 0.3, 'upper-body-lunge': 0.2 },
    forStudent:
      'You drift away from the target on the way back and then have to find the ball again: turn over your {trail} foot without moving off it.',
    drills: [
      'cushion-at-hip',
      'past-the-stick',
      'feet-together',
      'head-mark',
      'trail-foot-out',
      'own-fault-on-purpose',
      'lead-side-start',
      'line-brush',
    ],
  }),
  cause({
    id: 'reverse-tilt',
    name: 'Upper body leans to the target at the top',
    brings: { fat: 2, topped: 1, slice: 1 },
    signs: [
      above('trunk-lean-at-top', { edge: 6, sd: 4, sens: 0.75, spec: 0.9, shares: 'trunk-at-top' }),
      above('head-ahead-of-hip-middle-at-top', { sd: 30, sens: 0.75, spec: 0.9, shares: 'trunk-at-top' }),
      above('head-shift-address-top', { sd: 25, sens: 0.7, spec: 0.92, shares: 'head-at-top' }),
    ],
    unseen,
    leadsTo: { 'hang-back': 0.4, 'out-to-in': 0.2 },
    forStudent:
      'At the top your upper body leans towards the target, and then it falls back: keep your chest over your {trail} knee as you turn.',
    drills: ['head-mark', 'club-across-shoulders', 'pause-at-top', 'line-brush'],
  }),
  cause({
    id: 'under-turn',
    name: 'Turns too little, lifts with the arms',
    brings: { slice: 2 },
    signs: [observed('lead-shoulder-short-of-ball', 'face-on', 0.7, 0.8)],
    unseen,
    leadsTo: { 'out-to-in': 0.4, 'over-long': 0.2 },
    forStudent:
      'Your arms go back alone and your shoulders stay behind: turn until your {lead} shoulder is over the ball.',
    drills: ['club-across-shoulders', 'trail-foot-out', 'waist-high-swings', 'towel-under-arms'],
  }),
] as const;
