import { causeIn } from './cause-in.ts';
import { aboveBehind, belowBehind, observed } from './sign.ts';
import { filmBehind } from './unseen.ts';

const cause = causeIn('arc', 0.6);
const unseen = { 'face-on': filmBehind };

/** From which side the club comes to the ball. */
export const pathCauses = [
  cause({
    id: 'out-to-in',
    name: 'Club comes from the outside',
    brings: { slice: 3, pull: 3, sky: 3, heel: 2, toe: 1 },
    signs: [
      aboveBehind('shaft-steeper-at-lead-arm-down', { sd: 4, sens: 0.75, spec: 0.9, shares: 'plane-down' }),
      aboveBehind('hands-above-address-shaft-at-lead-arm-down', {
        sd: 40,
        sens: 0.75,
        spec: 0.88,
        shares: 'plane-down',
      }),
      aboveBehind('clubhead-outside-hands-at-shaft-parallel-down', {
        sd: 60,
        sens: 0.75,
        spec: 0.88,
        shares: 'plane-down',
      }),
      observed('clubhead-outside-hands-down', 'down-the-line', 0.7, 0.85, 'plane-down'),
    ],
    unseen,
    leadsTo: {},
    forStudent:
      'The club comes down outside your hands and cuts across the ball: let your hands fall beside your {trail} pocket before the club goes out.',
    drills: ['cover-outside', 'waist-high-swings', 'pump', 'pause-at-top'],
  }),
  cause({
    id: 'in-to-out',
    name: 'Club comes too much from the inside',
    brings: { fat: 2, hook: 2, push: 2, shank: 2, heel: 1 },
    signs: [
      belowBehind('shaft-steeper-at-lead-arm-down', { sd: 4, sens: 0.75, spec: 0.9, shares: 'plane-down' }),
      belowBehind('hands-above-address-shaft-at-lead-arm-down', {
        sd: 40,
        sens: 0.7,
        spec: 0.88,
        shares: 'plane-down',
      }),
      belowBehind('clubhead-outside-hands-at-shaft-parallel-down', {
        sd: 60,
        sens: 0.7,
        spec: 0.88,
        shares: 'plane-down',
      }),
      observed('clubhead-inside-hands-down', 'down-the-line', 0.7, 0.8, 'plane-down'),
    ],
    unseen,
    leadsTo: { 'over-rolled': 0.3 },
    forStudent:
      'The club comes from too far behind you and meets the ground early: let it come down in front of your chest.',
    drills: ['cover-inside', 'two-rails', 'feet-together', 'flat-towel'],
  }),
  cause({
    id: 'inside-takeaway',
    name: 'Club rolls inside on the way back',
    brings: { shank: 2 },
    signs: [
      belowBehind('clubhead-outside-hands-at-shaft-parallel-back', {
        sd: 60,
        sens: 0.8,
        spec: 0.88,
        shares: 'way-back',
      }),
      observed('clubhead-inside-hands-back', 'down-the-line', 0.75, 0.85, 'way-back'),
    ],
    unseen,
    leadsTo: { 'out-to-in': 0.3, 'in-to-out': 0.3, 'open-face': 0.2 },
    forStudent:
      'The club rolls behind you as you begin and has to be brought round again: keep the clubhead outside your hands until they pass your {trail} thigh.',
    drills: ['toe-up-stops', 'cover-inside'],
  }),
] as const;
