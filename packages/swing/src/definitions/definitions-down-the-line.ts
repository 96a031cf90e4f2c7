import { type Definition, definerFor } from './definition.ts';

const define = definerFor('down-the-line');

const towardsBall = { backwards: true };
const proxy = { proxy: true };

const atAddress: readonly Definition[] = [
  // Seen from behind the hips show one edge each way: their middle is the middle of the pelvis from the side.
  define('trunk-bend-at-address', 'lean', ['address/neck-base', 'address/hip-middle'], {
    ...towardsBall,
    proxy: true,
  }),
  define('hands-to-thighs-at-address', 'apart', ['address/hands', 'address/thigh-front'], towardsBall),
  define('hands-ahead-of-toe-line', 'apart', ['address/hands', 'address/toe-line'], towardsBall),
  define('ball-ahead-of-toe-line', 'apart', ['address/ball', 'address/toe-line'], towardsBall),
  define('shaft-angle-at-address', 'rise', ['address/grip-end', 'address/clubhead']),
];

// Where the hands are not marked, the end of the grip stands for them: it lies closer to the player by half a grip.
const gripForHands = { value: 0, u: 20 };

const onTheWay: readonly Definition[] = [
  define(
    'clubhead-outside-hands-at-shaft-parallel-back',
    'apart',
    ['shaft-parallel-back/clubhead', 'shaft-parallel-back/hands'],
    towardsBall,
  ),
  define(
    'clubhead-outside-hands-at-shaft-parallel-back',
    'apart',
    ['shaft-parallel-back/clubhead', 'shaft-parallel-back/grip-end'],
    { ...towardsBall, offset: gripForHands, proxy: true },
  ),
  // The angle of the picture, not of the shaft in space.
  define(
    'shaft-steeper-at-lead-arm-down',
    'riseChange',
    [
      'lead-arm-parallel-down/clubhead',
      'lead-arm-parallel-down/grip-end',
      'address/grip-end',
      'address/clubhead',
    ],
    proxy,
  ),
  define('hands-above-address-shaft-at-lead-arm-down', 'above', [
    'lead-arm-parallel-down/hands',
    'address/clubhead',
    'address/grip-end',
  ]),
  define(
    'hands-above-address-shaft-at-lead-arm-down',
    'above',
    ['lead-arm-parallel-down/grip-end', 'address/clubhead', 'address/grip-end'],
    { offset: { value: 0, u: 25 }, proxy: true },
  ),
  define(
    'clubhead-outside-hands-at-shaft-parallel-down',
    'apart',
    ['shaft-parallel-down/clubhead', 'shaft-parallel-down/hands'],
    towardsBall,
  ),
  define(
    'clubhead-outside-hands-at-shaft-parallel-down',
    'apart',
    ['shaft-parallel-down/clubhead', 'shaft-parallel-down/grip-end'],
    { ...towardsBall, offset: gripForHands, proxy: true },
  ),
];

const toImpact: readonly Definition[] = [
  // The trunk turns and bends to the side by impact, which a picture adds to its bend (1 degree, common practice).
  define(
    'loss-of-trunk-bend-address-impact',
    'leanChange',
    ['impact/neck-base', 'impact/hip-middle', 'address/neck-base', 'address/hip-middle'],
    { offset: { value: 0, u: 1 }, proxy: true },
  ),
  define('seat-toward-ball-address-impact', 'apart', ['impact/seat-line', 'address/seat-line'], towardsBall),
  define('hands-toward-ball-address-impact', 'apart', ['impact/hands', 'address/hands'], towardsBall),
  define('hands-height-address-impact', 'raised', ['impact/hands', 'address/hands']),
  define('head-height-address-impact', 'raised', ['impact/head-centre', 'address/head-centre']),
];

/** Every measurement from behind, in the order of the swing. */
export const definitionsDownTheLine: readonly Definition[] = [...atAddress, ...onTheWay, ...toImpact];
