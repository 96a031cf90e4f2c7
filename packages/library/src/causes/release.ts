import { causeIn } from './cause-in.ts';
import { above, below, observed, outside } from './sign.ts';
import { filmFaceOn } from './unseen.ts';

const cause = causeIn('arc', 0.6);
const unseen = { 'down-the-line': filmFaceOn };

/** How wide the swing is and how early the club comes down. */
export const releaseCauses = [
  cause({
    id: 'thrown-early',
    name: 'Thrown early',
    brings: { fat: 3, thin: 2 },
    signs: [
      below('grip-end-to-ball-line-at-shaft-parallel-down', {
        edge: -125,
        sd: 35,
        sens: 0.8,
        spec: 0.9,
        shares: 'release',
      }),
      // The angle of a picture carries 12 degrees of doubt of its own: it supports, it never decides.
      above('forearm-shaft-angle-at-lead-arm-down', {
        sd: 12,
        sens: 0.65,
        spec: 0.8,
        shares: 'release',
        ratioAtMost: 3,
      }),
      observed('clubhead-in-line-early', 'face-on', 0.75, 0.85, 'release'),
    ],
    unseen,
    leadsTo: { flip: 0.5 },
    forStudent:
      'The clubhead overtakes your hands before they reach the ball and finds the ground first: bring your hands back in front of your {trail} thigh before the club swings out.',
    drills: ['pump', 'ball-fence', 'flat-towel', 'line-brush', 'one-arm-swings'],
  }),
  cause({
    id: 'flip',
    name: 'Flip: the shaft leans back at impact',
    brings: { thin: 3, fat: 2, hook: 1, slice: 1, 'face-scatter': 1 },
    signs: [
      // A picture read line by line bends a fast shaft: the lean of one frame supports, it never decides.
      below('shaft-lean-at-impact', {
        edge: 0,
        sd: 3,
        sens: 0.7,
        spec: 0.85,
        shares: 'handle-at-impact',
        ratioAtMost: 3,
      }),
      below('handle-ahead-of-ball-at-impact', {
        edge: 20,
        sd: 35,
        sens: 0.75,
        spec: 0.85,
        shares: 'handle-at-impact',
      }),
      observed('lead-wrist-cupped', 'face-on', 0.7, 0.8, 'handle-at-impact'),
    ],
    unseen,
    leadsTo: {},
    forStudent:
      'Your hands wait and the clubhead passes them: let your hands reach the ball before the club does.',
    drills: ['low-punch', 'cushion-press', 'line-brush', 'paper-strip', 'flat-towel', 'ball-fence'],
  }),
  cause({
    id: 'lead-arm-bend',
    name: 'Lead arm bends at impact',
    brings: { topped: 3, thin: 2, toe: 2, slice: 1 },
    signs: [
      above('lead-elbow-after-impact', { sd: 8, sens: 0.7, spec: 0.85, shares: 'lead-elbow' }),
      observed('lead-elbow-bends', 'face-on', 0.75, 0.8, 'lead-elbow'),
    ],
    unseen,
    leadsTo: {},
    forStudent:
      'Your {lead} elbow folds as you hit and lifts the club: keep that arm long until after the ball.',
    drills: ['low-punch', 'one-arm-swings', 'towel-under-arms', 'line-brush'],
  }),
  cause({
    id: 'over-long',
    name: 'Swing too long',
    brings: { fat: 1 },
    signs: [observed('shaft-past-parallel', 'either', 0.7, 0.8)],
    leadsTo: { 'thrown-early': 0.3, rushed: 0.2 },
    forStudent:
      'Your swing goes further than you can control: stop when your {lead} arm is level with your shoulder.',
    drills: ['towel-under-arms', 'pause-at-top', 'line-brush'],
  }),
  cause({
    id: 'rushed',
    name: 'Rushed from the top',
    brings: { fat: 1, slice: 1, 'low-point-scatter': 2 },
    signs: [
      // A ratio of times alone says little of one swing.
      outside('tempo-ratio', { sd: 0.5, sens: 0.4, spec: 0.85, ratioAtMost: 2 }),
      observed('no-pause-at-top', 'either', 0.5, 0.8),
    ],
    leadsTo: { 'thrown-early': 0.3, 'out-to-in': 0.2 },
    forStudent: 'You start down before you have finished going back: give the top of the swing its moment.',
    drills: ['counted-rhythm', 'pause-at-top', 'feet-together', 'line-brush'],
  }),
  cause({
    id: 'radius-change',
    name: 'Arms change their length',
    brings: { fat: 1, thin: 1, 'low-point-scatter': 2 },
    signs: [observed('arms-reach-at-top', 'face-on', 0.5, 0.75)],
    unseen,
    leadsTo: {},
    forStudent:
      'Your arms get longer and shorter during the swing: keep the width you have when you stand ready.',
    drills: ['line-brush', 'face-strike-spots'],
  }),
] as const;
