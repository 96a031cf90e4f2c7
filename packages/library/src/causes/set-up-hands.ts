import { causeIn } from './cause-in.ts';
import { above, below, observed } from './sign.ts';
import { feltOnly, filmFaceOn } from './unseen.ts';

const cause = causeIn('set-up', 1);
const toBall = { sd: 30, shares: 'body-to-ball', ratioAtMost: 1.6 } as const;

/** How the hands and the hips are set before the club moves. */
export const handsAndHipsCauses = [
  cause({
    id: 'handle-back',
    name: 'Handle too far back at address',
    tick: 'handle',
    brings: { fat: 3, thin: 2 },
    signs: [
      below('handle-ahead-of-lead-thigh', { sd: 20, sens: 0.8, spec: 0.9, shares: 'grip-end-at-address' }),
      below('handle-ahead-of-hip-middle', { sd: 20, sens: 0.8, spec: 0.9, shares: 'grip-end-at-address' }),
      // A ball too far forward shows the same: it supports.
      below('handle-ahead-of-ball', {
        sd: 25,
        sens: 0.75,
        spec: 0.88,
        shares: 'grip-end-at-address',
        ratioAtMost: 3,
      }),
      observed('handle-at-mid-body', 'face-on', 0.7, 0.85, 'grip-end-at-address'),
    ],
    unseen: { 'down-the-line': filmFaceOn },
    leadsTo: { flip: 0.4 },
    forStudent:
      'Your hands start behind the ball, so the club wants to reach the ground too early: let the handle lie in front of the inside of your {lead} thigh.',
    drills: ['set-up-photo', 'low-punch', 'line-brush'],
  }),
  cause({
    id: 'hips-back-at-address',
    name: 'Hips too far back at address',
    tick: 'hips',
    brings: { fat: 3, thin: 2 },
    signs: [
      below('hip-middle-along-ankles', { sd: 4, sens: 0.7, spec: 0.88, shares: 'hips-over-feet' }),
      below('trunk-lean-at-address', { sd: 4, sens: 0.5, spec: 0.85, shares: 'body-to-ball' }),
      // A ball too far forward shows the same: they support.
      above('hip-middle-behind-ball', { ...toBall, sens: 0.65, spec: 0.85 }),
      above('neck-base-behind-ball', { ...toBall, sens: 0.6, spec: 0.85 }),
      above('head-behind-ball', { ...toBall, sens: 0.6, spec: 0.85 }),
    ],
    unseen: { 'down-the-line': filmFaceOn },
    leadsTo: { 'hang-back': 0.4, flip: 0.2 },
    forStudent:
      'You stand with your hips towards your {trail} foot before you start: set your belt half-way between your ankles or a touch towards the {lead} one.',
    drills: ['set-up-photo', 'lead-side-start', 'line-brush'],
  }),
  cause({
    id: 'weak-grip',
    name: 'Weak grip',
    tick: 'grip',
    brings: { slice: 3, fat: 2, push: 1, thin: 1, 'face-scatter': 2 },
    signs: [observed('lead-hand-on-lead-half', 'either', 0.75, 0.85)],
    leadsTo: { flip: 0.3, 'open-face': 0.4, 'out-to-in': 0.2 },
    forStudent:
      'Your {lead} hand sits too far under the handle: turn it until the hollow at the base of the thumb lies on the {trail} half of the shaft.',
    drills: ['grip-ladder', 'set-up-photo', 'split-hands'],
  }),
  cause({
    id: 'strong-grip',
    name: 'Strong grip',
    tick: 'grip',
    brings: { hook: 3, 'face-scatter': 2 },
    signs: [observed('lead-hand-far-over', 'either', 0.75, 0.85)],
    leadsTo: { 'closed-face': 0.4, 'in-to-out': 0.2 },
    forStudent:
      'Your {lead} hand lies so far over the handle that the club closes: turn it back until you see two knuckles, three at most.',
    drills: ['grip-ladder', 'toe-up-stops'],
  }),
  cause({
    id: 'grip-tension',
    name: 'Hands too tight',
    brings: { topped: 1 },
    signs: [observed('tight-hands', 'either', 0.5, 0.8)],
    unseen: { 'face-on': feltOnly, 'down-the-line': feltOnly },
    leadsTo: { 'thrown-early': 0.2, rushed: 0.2 },
    forStudent: 'You hold on so hard that your arms shorten: hold the club as you would hold a bird.',
    drills: ['soft-hands', 'feet-together', 'line-brush'],
  }),
] as const;
