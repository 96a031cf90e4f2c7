import type { Cause } from '../types.ts';
import { measured, observed, startingValue } from './sign.ts';

const group = 'arc';
const source = startingValue;
const trainability = 0.6;

/** How wide, how steep and how early the club comes down. */
export const arcCauses: readonly Cause[] = [
  {
    id: 'thrown-early',
    name: 'Thrown early',
    group,
    brings: { fat: 3, thin: 2 },
    baseRate: 0.45,
    signs: [
      measured({
        key: 'grip-end-to-ball-line-at-shaft-parallel-down',
        direction: 'below',
        edge: -125,
        sd: 35,
        sensitivity: 0.8,
        specificity: 0.85,
        shares: 'release',
      }),
      observed('clubhead-in-line-early', 'face-on', 0.75, 0.85, 'release'),
    ],
    leadsTo: { flip: 0.5 },
    trainability,
    forStudent:
      'The clubhead overtakes your hands before they reach the ball and finds the ground first: bring your hands back in front of your {trail} thigh before the club swings out.',
    drills: ['ball-fence', 'flat-towel', 'line-brush'],
    source,
  },
  {
    id: 'flip',
    name: 'Flip: the shaft leans back at impact',
    group,
    brings: { thin: 3, fat: 2, hook: 1, slice: 1 },
    baseRate: 0.45,
    signs: [
      measured({
        key: 'shaft-lean-at-impact',
        direction: 'below',
        edge: 2,
        sd: 3,
        sensitivity: 0.75,
        specificity: 0.85,
        shares: 'handle-at-impact',
      }),
      measured({
        key: 'handle-ahead-of-ball-at-impact',
        direction: 'below',
        edge: 30,
        sd: 35,
        sensitivity: 0.75,
        specificity: 0.85,
        shares: 'handle-at-impact',
      }),
      observed('lead-wrist-cupped', 'face-on', 0.7, 0.8, 'handle-at-impact'),
    ],
    leadsTo: {},
    trainability,
    forStudent:
      'Your hands wait and the clubhead passes them: let your hands reach the ball before the club does.',
    drills: ['flat-towel', 'ball-fence', 'line-brush'],
    source,
  },
  {
    id: 'lead-arm-bend',
    name: 'Lead arm bends at impact',
    group,
    brings: { topped: 3, thin: 2, toe: 2, slice: 1 },
    baseRate: 0.45,
    signs: [observed('lead-elbow-bends', 'face-on', 0.75, 0.8)],
    leadsTo: {},
    trainability,
    forStudent:
      'Your {lead} elbow folds as you hit and lifts the club: keep that arm long until after the ball.',
    drills: ['line-brush'],
    source,
  },
  {
    id: 'in-to-out',
    name: 'Club comes too much from the inside',
    group,
    brings: { fat: 2, hook: 2, push: 2, shank: 2, heel: 1 },
    baseRate: 0.3,
    signs: [observed('clubhead-inside-hands-down', 'down-the-line', 0.7, 0.8)],
    leadsTo: {},
    trainability,
    forStudent:
      'The club comes from too far behind you and meets the ground early: let it come down in front of your chest.',
    drills: ['flat-towel'],
    source,
  },
  {
    id: 'over-long',
    name: 'Swing too long',
    group,
    brings: { fat: 1 },
    baseRate: 0.15,
    signs: [observed('shaft-past-parallel', 'either', 0.7, 0.8)],
    leadsTo: { 'thrown-early': 0.3, rushed: 0.2 },
    trainability,
    forStudent:
      'Your swing goes further than you can control: stop when your {lead} arm is level with your shoulder.',
    drills: ['line-brush'],
    source,
  },
  {
    id: 'rushed',
    name: 'Rushed from the top',
    group,
    brings: { fat: 1, slice: 1 },
    baseRate: 0.15,
    signs: [observed('no-pause-at-top', 'either', 0.5, 0.8)],
    leadsTo: { 'thrown-early': 0.3 },
    trainability,
    forStudent: 'You start down before you have finished going back: give the top of the swing its moment.',
    drills: ['line-brush'],
    source,
  },
  {
    id: 'radius-change',
    name: 'Arms change their length',
    group,
    brings: { fat: 1, thin: 1 },
    baseRate: 0.15,
    signs: [observed('arms-reach-at-top', 'face-on', 0.5, 0.75)],
    leadsTo: {},
    trainability,
    forStudent:
      'Your arms get longer and shorter during the swing: keep the width you have when you stand ready.',
    drills: ['line-brush'],
    source,
  },
];
