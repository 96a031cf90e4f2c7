import type { Unit } from './measurement.ts';

/**
 * What each measurement is called on a screen. Signs, for either hand: along is + towards the target, up is +.
 * `positive` and `negative` are the words of a factor; `{n}` takes the figure without its sign, with its doubt and unit.
 */
export type MeasurementName = {
  readonly name: string;
  readonly unit: Unit;
  readonly unitLabel: string;
  readonly positive: string;
  readonly negative: string;
};

const mm = (name: string, positive: string, negative: string): MeasurementName => ({
  name,
  unit: 'mm',
  unitLabel: 'mm',
  positive,
  negative,
});
const percent = (name: string, positive: string, negative: string): MeasurementName => ({
  name,
  unit: 'percent',
  unitLabel: '%',
  positive,
  negative,
});
const deg = (name: string, positive: string, negative: string): MeasurementName => ({
  name,
  unit: 'deg',
  unitLabel: '°',
  positive,
  negative,
});

const names = {
  // Address. Along the ankles: 0 is over the trail ankle, 100 over the lead ankle.
  'ankle-distance': mm('Distance between the ankles', 'ankles {n} apart', 'ankles {n} apart'),
  'hip-middle-along-ankles': percent(
    'Hip-middle along the ankle line',
    'hip-middle at {n} of the way from trail to lead ankle at address',
    'hip-middle {n} outside the trail ankle at address',
  ),
  'hip-middle-behind-ball': mm(
    'Hip-middle behind the ball',
    'hip-middle {n} behind the ball at address',
    'hip-middle {n} ahead of the ball at address',
  ),
  'head-behind-ball': mm(
    'Head behind the ball',
    'head {n} behind the ball at address',
    'head {n} ahead of the ball at address',
  ),
  'neck-base-behind-ball': mm(
    'Neck-base behind the ball',
    'neck-base {n} behind the ball at address',
    'neck-base {n} ahead of the ball at address',
  ),
  // A sound handle with an 8-iron: about 0 to 90 mm ahead of the ball, 60 to 170 mm ahead of hip-middle (proxies).
  'handle-ahead-of-ball': mm(
    'Handle ahead of the ball',
    'handle {n} ahead of the ball at address',
    'handle {n} behind the ball at address',
  ),
  'handle-ahead-of-hip-middle': mm(
    'Handle ahead of hip-middle',
    'handle {n} ahead of hip-middle at address',
    'handle {n} behind hip-middle at address',
  ),
  'handle-ahead-of-lead-thigh': mm(
    'Handle to the inside of the lead thigh',
    'handle {n} ahead of the inside of the lead thigh',
    'handle {n} behind the inside of the lead thigh',
  ),
  'ball-inside-lead-heel': mm(
    'Ball inside the lead heel',
    'ball {n} inside the lead heel',
    'ball {n} outside the lead heel',
  ),

  // Address to top.
  'hip-shift-address-top': mm(
    'Hips, address to top',
    'hips {n} towards the target at the top',
    'hips {n} away from the target at the top',
  ),
  'hip-shift-address-top-percent': percent(
    'Hips, address to top, of the ankle distance',
    'hips {n} of the stance towards the target at the top',
    'hips {n} of the stance away from the target at the top',
  ),
  'head-shift-address-top': mm(
    'Head, address to top',
    'head {n} towards the target at the top',
    'head {n} away from the target at the top',
  ),
  'head-shift-address-top-percent': percent(
    'Head, address to top, of the ankle distance',
    'head {n} of the stance towards the target at the top',
    'head {n} of the stance away from the target at the top',
  ),
  'head-height-address-top': mm(
    'Head height, address to top',
    'head {n} higher at the top',
    'head {n} lower at the top',
  ),
  'head-ahead-of-hip-middle-at-top': mm(
    'Head ahead of hip-middle at the top',
    'head {n} ahead of hip-middle at the top',
    'head {n} behind hip-middle at the top',
  ),
  'trunk-lean-at-top': deg(
    'Trunk lean at the top',
    'trunk {n} towards the target at the top',
    'trunk {n} away from the target at the top',
  ),

  // Top to lead arm parallel on the way down.
  'hip-shift-top-lead-arm-down': mm(
    'Hips, top to lead arm parallel',
    'hips {n} forward from the top by lead arm parallel',
    'hips {n} back from the top by lead arm parallel',
  ),
  'hip-shift-top-lead-arm-down-percent': percent(
    'Hips, top to lead arm parallel, of the ankle distance',
    'hips {n} of the stance forward from the top by lead arm parallel',
    'hips {n} of the stance back from the top by lead arm parallel',
  ),
  'head-shift-top-lead-arm-down': mm(
    'Head, top to lead arm parallel',
    'head {n} forward from the top by lead arm parallel',
    'head {n} back from the top by lead arm parallel',
  ),
  'head-shift-top-lead-arm-down-percent': percent(
    'Head, top to lead arm parallel, of the ankle distance',
    'head {n} of the stance forward from the top by lead arm parallel',
    'head {n} of the stance back from the top by lead arm parallel',
  ),
  'head-height-top-lead-arm-down': mm(
    'Head height, top to lead arm parallel',
    'head {n} higher by lead arm parallel',
    'head {n} lower by lead arm parallel',
  ),

  // Shaft parallel to the ground on the way down, impact, finish.
  'grip-end-to-ball-line-at-shaft-parallel-down': mm(
    'Grip end to the ball line, shaft parallel down',
    'grip end {n} past the ball line with the shaft parallel on the way down',
    'grip end {n} short of the ball line with the shaft parallel on the way down',
  ),
  'hip-shift-address-impact': mm(
    'Hips, address to impact',
    'hips {n} towards the target at impact',
    'hips {n} away from the target at impact',
  ),
  'head-shift-address-impact': mm(
    'Head, address to impact',
    'head {n} towards the target at impact',
    'head {n} away from the target at impact',
  ),
  'head-height-address-impact': mm(
    'Head height, address to impact',
    'head {n} higher at impact',
    'head {n} lower at impact',
  ),
  'neck-base-height-address-impact': mm(
    'Neck-base height, address to impact',
    'neck-base {n} higher at impact',
    'neck-base {n} lower at impact',
  ),
  'handle-ahead-of-ball-at-impact': mm(
    'Handle ahead of the ball at impact',
    'handle {n} ahead of the ball at impact',
    'handle {n} behind the ball at impact',
  ),
  'shaft-lean-at-impact': deg(
    'Shaft lean at impact',
    'shaft {n} forward at impact',
    'shaft {n} back at impact',
  ),
  'hip-past-ball-at-finish': mm(
    'Hips past the ball at the finish',
    'hips {n} past the ball at the finish',
    'hips {n} short of the ball at the finish',
  ),
  'hip-over-lead-ankle-at-finish': mm(
    'Hips over the lead ankle at the finish',
    'hips {n} past the lead ankle at the finish',
    'hips {n} short of the lead ankle at the finish',
  ),
} as const satisfies Record<string, MeasurementName>;

export type MeasurementKey = keyof typeof names;

/** Every measurement this package can make, by key. */
export const measurementNames: Readonly<Record<MeasurementKey, MeasurementName>> = names;

export const measurementKeys = Object.keys(names) as readonly MeasurementKey[];

export function isMeasurementKey(key: string): key is MeasurementKey {
  return Object.hasOwn(names, key);
}
