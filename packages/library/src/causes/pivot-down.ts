import { causeIn } from './cause-in.ts';
import { above, below, observed } from './sign.ts';
import { filmBehind, filmFaceOn } from './unseen.ts';

const cause = causeIn('pivot', 0.8);
const unseen = { 'down-the-line': filmFaceOn };

/** How the body moves forward, from the top to the finish. */
export const pivotDownCauses = [
  cause({
    id: 'hang-back',
    name: 'Hang-back: no forward shift by lead arm parallel',
    brings: { fat: 3, thin: 2, 'low-point-scatter': 3 },
    signs: [
      below('hip-shift-top-lead-arm-down', { sd: 20, sens: 0.8, spec: 0.85, shares: 'forward-shift' }),
      below('hip-shift-top-lead-arm-down-percent', { sd: 5, sens: 0.8, spec: 0.85, shares: 'forward-shift' }),
      below('head-shift-top-lead-arm-down', {
        edge: -5,
        sd: 15,
        sens: 0.6,
        spec: 0.85,
        shares: 'forward-shift',
      }),
      below('hip-shift-address-impact', { sd: 25, sens: 0.7, spec: 0.85, shares: 'forward-shift' }),
      below('trail-heel-lift-at-impact', { sd: 20, sens: 0.6, spec: 0.8, shares: 'trail-foot' }),
      below('hip-past-ball-at-finish', { sd: 60, sens: 0.65, spec: 0.85, shares: 'finish' }),
      below('hip-over-lead-ankle-at-finish', { sd: 50, sens: 0.65, spec: 0.85, shares: 'finish' }),
      observed('trail-heel-down', 'face-on', 0.6, 0.85, 'trail-foot'),
      observed('falls-back', 'face-on', 0.6, 0.9, 'finish'),
    ],
    unseen,
    leadsTo: { flip: 0.4, 'thrown-early': 0.4, 'lead-arm-bend': 0.2 },
    forStudent:
      'You are still on your {trail} side when the club comes down, so the swing bottoms out behind the ball: move onto your {lead} foot before your arms come down.',
    drills: [
      'lead-side-start',
      'ball-fence',
      'step-through',
      'past-the-stick',
      'line-brush',
      'forward-tee',
      'pump',
      'lead-foot-downhill',
      'own-fault-on-purpose',
    ],
  }),
  cause({
    id: 'upper-body-lunge',
    name: 'Upper body lunges ahead of the ball',
    brings: { topped: 2, pull: 2, sky: 3, thin: 1 },
    signs: [
      above('head-shift-address-impact', { sd: 20, sens: 0.75, spec: 0.9, shares: 'upper-body-at-impact' }),
      above('neck-base-shift-address-impact', {
        sd: 20,
        sens: 0.75,
        spec: 0.9,
        shares: 'upper-body-at-impact',
      }),
      observed('chest-leans-ahead', 'face-on', 0.65, 0.8, 'upper-body-at-impact'),
    ],
    unseen,
    leadsTo: { 'lead-arm-bend': 0.2, 'out-to-in': 0.2 },
    forStudent:
      'Your head and chest run past the ball before the club does: let your hips go first and your head stay.',
    drills: ['head-mark', 'pause-at-top', 'feet-together', 'forward-tee', 'line-brush'],
  }),
  cause({
    id: 'slide-without-turn',
    name: 'Hips slide and do not turn',
    brings: { push: 2, hook: 1 },
    signs: [
      above('hip-shift-address-impact', {
        edge: 150,
        sd: 25,
        sens: 0.7,
        spec: 0.9,
        shares: 'hips-at-impact',
      }),
      observed('hip-outside-lead-foot', 'face-on', 0.65, 0.85, 'hips-at-impact'),
      observed('pockets-hidden-at-impact', 'down-the-line', 0.6, 0.75),
    ],
    leadsTo: { 'in-to-out': 0.3, 'over-rolled': 0.2 },
    forStudent:
      'Your hips run towards the target and forget to turn: let your belt buckle look at the target as you arrive on your {lead} foot.',
    drills: ['feet-together', 'cushion-press', 'seat-touch'],
  }),
  cause({
    id: 'stalled-turn',
    name: 'The turn stalls before impact',
    brings: { hook: 3 },
    signs: [observed('pockets-hidden-at-impact', 'down-the-line', 0.75, 0.8)],
    unseen: { 'face-on': filmBehind },
    leadsTo: { flip: 0.3, 'over-rolled': 0.3 },
    forStudent:
      'Your body stops turning and the arms swing past it: keep your belt buckle turning until it looks at the target.',
    drills: ['step-through', 'cushion-press', 'towel-under-arms'],
  }),
] as const;
