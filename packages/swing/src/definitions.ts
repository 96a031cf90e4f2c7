import { type Definition, define } from './definition.ts';

const back = { backwards: true };
const percent = { perAnkles: true };
const proxy = { proxy: true };

const atAddress: readonly Definition[] = [
  define('ankle-distance', 'along', 'address/lead-ankle', 'address/trail-ankle'),
  define('hip-middle-along-ankles', 'along', 'address/hip-middle', 'address/trail-ankle', percent),
  define('hip-middle-behind-ball', 'along', 'address/hip-middle', 'address/ball', back),
  define('head-behind-ball', 'along', 'address/head-centre', 'address/ball', back),
  define('neck-base-behind-ball', 'along', 'address/neck-base', 'address/ball', back),
  // Stand for the handle at the inside of the lead thigh, which the first pass does not mark.
  define('handle-ahead-of-ball', 'along', 'address/grip-end', 'address/ball', proxy),
  define('handle-ahead-of-hip-middle', 'along', 'address/grip-end', 'address/hip-middle', proxy),
  define('handle-ahead-of-lead-thigh', 'along', 'address/grip-end', 'address/lead-thigh-inside'),
  define('ball-inside-lead-heel', 'along', 'address/lead-heel', 'address/ball'),
  // A foot turned out carries the ankle about 15 mm closer to the target than its heel (derived: 50 mm at 17 degrees).
  define('ball-inside-lead-heel', 'along', 'address/lead-ankle', 'address/ball', {
    offset: { value: -15, u: 10 },
    proxy: true,
  }),
];

const toTheTop: readonly Definition[] = [
  define('hip-shift-address-top', 'along', 'top/hip-middle', 'address/hip-middle'),
  define('hip-shift-address-top-percent', 'along', 'top/hip-middle', 'address/hip-middle', percent),
  define('head-shift-address-top', 'along', 'top/head-centre', 'address/head-centre'),
  define('head-shift-address-top-percent', 'along', 'top/head-centre', 'address/head-centre', percent),
  define('head-height-address-top', 'up', 'top/head-centre', 'address/head-centre'),
  define('head-ahead-of-hip-middle-at-top', 'along', 'top/head-centre', 'top/hip-middle', proxy),
  define('trunk-lean-at-top', 'lean', 'top/neck-base', 'top/hip-middle', proxy),
];

const onTheWayDown: readonly Definition[] = [
  define('hip-shift-top-lead-arm-down', 'along', 'lead-arm-parallel-down/hip-middle', 'top/hip-middle'),
  define(
    'hip-shift-top-lead-arm-down-percent',
    'along',
    'lead-arm-parallel-down/hip-middle',
    'top/hip-middle',
    percent,
  ),
  define('head-shift-top-lead-arm-down', 'along', 'lead-arm-parallel-down/head-centre', 'top/head-centre'),
  define(
    'head-shift-top-lead-arm-down-percent',
    'along',
    'lead-arm-parallel-down/head-centre',
    'top/head-centre',
    percent,
  ),
  define('head-height-top-lead-arm-down', 'up', 'lead-arm-parallel-down/head-centre', 'top/head-centre'),
  define(
    'grip-end-to-ball-line-at-shaft-parallel-down',
    'along',
    'shaft-parallel-down/grip-end',
    'address/ball',
  ),
];

// A fast shaft is bent by the rolling shutter and blurred: its doubt at impact is larger than a click's. Common practice.
const throughTheBall: readonly Definition[] = [
  define('hip-shift-address-impact', 'along', 'impact/hip-middle', 'address/hip-middle'),
  define('head-shift-address-impact', 'along', 'impact/head-centre', 'address/head-centre'),
  define('head-height-address-impact', 'up', 'impact/head-centre', 'address/head-centre'),
  define('neck-base-height-address-impact', 'up', 'impact/neck-base', 'address/neck-base'),
  define('handle-ahead-of-ball-at-impact', 'along', 'impact/grip-end', 'address/ball', {
    offset: { value: 0, u: 15 },
    proxy: true,
  }),
  define('shaft-lean-at-impact', 'lean', 'impact/grip-end', 'impact/clubhead', {
    offset: { value: 0, u: 4 },
    proxy: true,
  }),
  define('hip-past-ball-at-finish', 'along', 'finish/hip-middle', 'address/ball'),
  define('hip-over-lead-ankle-at-finish', 'along', 'finish/hip-middle', 'address/lead-ankle'),
];

/** Every face-on measurement this package makes, in the order of the swing. */
export const definitions: readonly Definition[] = [
  ...atAddress,
  ...toTheTop,
  ...onTheWayDown,
  ...throughTheBall,
];
